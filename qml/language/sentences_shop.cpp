// What the store, spreadsheets, knowledge of models and the record say.
#include "qml/language/sentences.h"

#include <QtGlobal>

#include <array>

namespace undercowl::ui {

namespace {

constexpr std::array all{
    // Proofs of core/job/message.cpp, which stand within other messages.
    QT_TRANSLATE_NOOP("Core", "tightened to the torque and read: %1 (%2)"),
    QT_TRANSLATE_NOOP("Core", "every fastener in and tight: %1 (%2)"),
    QT_TRANSLATE_NOOP("Core", "each wire read back against the map: %1"),
    QT_TRANSLATE_NOOP("Core", "runs as on its photo, clipped, dry under pressure: %1"),
    QT_TRANSLATE_NOOP("Core", "runs as it was written down, clipped, dry under pressure: %1"),
    QT_TRANSLATE_NOOP("Core", "runs as the machine's manual shows, clipped, dry under pressure: %1"),
    QT_TRANSLATE_NOOP("Core", "moves freely at both locks, free play right: %1"),
    QT_TRANSLATE_NOOP("Core", "filled again, level right, no leak: %1 (let out: %2)"),
    QT_TRANSLATE_NOOP("Core", "sits as it did, nothing left over: %1"),
    QT_TRANSLATE_NOOP("Core", "at least %1"),
    QT_TRANSLATE_NOOP("Core", "at most %1"),
    QT_TRANSLATE_NOOP("Core", "%1 to %2"),
    QT_TRANSLATE_NOOP("Core", "%1: fits"),
    QT_TRANSLATE_NOOP("Core", "%1: fits after a change (%2)"),
    QT_TRANSLATE_NOOP("Core", "%1: does not fit (%2)"),
    QT_TRANSLATE_NOOP("Core", "line %1: a quote is opened and not closed"),
    QT_TRANSLATE_NOOP("Core", "line %1: letters stand between a closing quote and the end of its cell"),
    QT_TRANSLATE_NOOP("Core", "make, model: one of them must be there"),
    QT_TRANSLATE_NOOP("Core", "year: '%1' is no year such as 1987"),
    QT_TRANSLATE_NOOP("Core", "passed over: is here as job %1"),
    QT_TRANSLATE_NOOP("Core", "opens job %1: %2"),
    QT_TRANSLATE_NOOP("Core", "part: must say what part it is"),
    QT_TRANSLATE_NOOP("Core", "price: '%1' is no number such as 18.50"),
    QT_TRANSLATE_NOOP("Core", "currency: a price needs its currency, such as EUR"),
    QT_TRANSLATE_NOOP("Core", "job: there is no job '%1' in this shop"),
    QT_TRANSLATE_NOOP("Core", "passed over: job %1 has it"),
    QT_TRANSLATE_NOOP("Core", "adds to job %1: %2"),
    QT_TRANSLATE_NOOP("Core", "odometer: %1"),
    QT_TRANSLATE_NOOP("Core", "%1: '%2' is not known"),
    QT_TRANSLATE_NOOP("Core", "%1: has %2 bytes, at most %3 are kept; shorten the text"),
    QT_TRANSLATE_NOOP("Core", "%1: is not written in UTF-8; save the sheet as CSV in UTF-8, or type it anew"),
    QT_TRANSLATE_NOOP("Core", "%1: holds a NUL character; type it anew"),
    QT_TRANSLATE_NOOP("Core", "the file is empty"),
    QT_TRANSLATE_NOOP("Core", "the first line names no column that is known: a sheet of machines has "
                              "\"make\" and \"model\", one of parts has \"job\" and \"part\""),
    QT_TRANSLATE_NOOP("Core", "media file %1: its content does not fit its name"),
    QT_TRANSLATE_NOOP("Core", "backup: %1 exists already; give another name"),
    QT_TRANSLATE_NOOP("Core", "%1 is the current shop: go on with another one first"),
    QT_TRANSLATE_NOOP("Core", "%1 could not be removed: %2"),
    QT_TRANSLATE_NOOP("Core", "backup: what was written is not what can be read again"),
    QT_TRANSLATE_NOOP("Core", "%1. Make room on the disk, then try again."),
    QT_TRANSLATE_NOOP("Core", "%1. Check who owns the folder and whether it may be written."),
    QT_TRANSLATE_NOOP("Core", "cannot write %1"),
    QT_TRANSLATE_NOOP("Core", "cannot sync %1"),
    QT_TRANSLATE_NOOP("Core", "cannot close %1"),
    QT_TRANSLATE_NOOP("Core", "cannot make the folder %1"),
    QT_TRANSLATE_NOOP("Core", "cannot create %1"),
    QT_TRANSLATE_NOOP("Core", "cannot rename to %1"),
    QT_TRANSLATE_NOOP("Core", "cannot remove %1"),
    QT_TRANSLATE_NOOP("Core", "cannot open the folder %1"),
    QT_TRANSLATE_NOOP("Core", "cannot look at %1"),
    QT_TRANSLATE_NOOP("Core", "cannot list the folder %1"),
    QT_TRANSLATE_NOOP("Core", "cannot open %1"),
    QT_TRANSLATE_NOOP("Core", "cannot read %1"),
    QT_TRANSLATE_NOOP("Core", "%1 is not a regular file. Move it away."),
    QT_TRANSLATE_NOOP("Core", "Make room on the disk, then try again; nothing of this was kept."),
    QT_TRANSLATE_NOOP("Core",
                      "Nothing was changed. Bring what can be read into a new place with 'undercowlctl "
                      "store salvage --to NEWFOLDER', and name a backup with --from if there is one."),
    QT_TRANSLATE_NOOP("Core",
                      "Check that the folder may be written and that no other program holds it locked."),
    QT_TRANSLATE_NOOP("Core", "Try again; if it comes back, check the disk."),
    QT_TRANSLATE_NOOP("Core",
                      "%1 is the database of another program. It was left as it is; name another folder."),
    QT_TRANSLATE_NOOP("Core", "%1 was written by a newer version (schema %2, known here: up to %3). It was "
                              "left as it is; update this program."),
    QT_TRANSLATE_NOOP("Core", "This shop was written by a newer version of the program and can only be "
                              "looked at here. Bring this program up to date to go on working in it."),
    QT_TRANSLATE_NOOP("Core",
                      "The disk is full, so this shop can only be looked at. Nothing in it was changed. "
                      "Make room on the disk to go on working in it."),
    QT_TRANSLATE_NOOP(
        "Core", "This shop is damaged and can only be looked at. Nothing in it was changed. A new one can "
                "be made of what can be read."),
    QT_TRANSLATE_NOOP(
        "Core",
        "the store in %1 has lost its shop.db, but photos or copies of it are there. "
        "Nothing was changed. Bring what can be read into a new place with "
        "'undercowlctl store salvage --to NEWFOLDER', and name a backup with --from if there is one."),
    QT_TRANSLATE_NOOP(
        "Core",
        "the store in %1 has an empty shop.db, but photos or copies of it are there. "
        "Nothing was changed. Bring what can be read into a new place with "
        "'undercowlctl store salvage --to NEWFOLDER', and name a backup with --from if there is one."),
    QT_TRANSLATE_NOOP("Core",
                      "%1 holds no store but other things, such as '%2'. Name an empty folder or a new one."),
    QT_TRANSLATE_NOOP(
        "Core", "the key of the backup needs %1 MiB of memory, which are not free; close other programs"),
    QT_TRANSLATE_NOOP("Core", "passphrase: must have at least 8 bytes; several words are best"),
    QT_TRANSLATE_NOOP("Core", "find: at most 16 words at a time"),
    QT_TRANSLATE_NOOP("Core", "body: has %1 bytes, at most %2 are kept; shorten the text"),
    QT_TRANSLATE_NOOP("Core", "media: a file must have between 1 byte and 256 MiB, this one has %1 bytes"),
    QT_TRANSLATE_NOOP("Core", "media: the file %1 is missing. Put it back from a backup or an archive."),
    QT_TRANSLATE_NOOP("Core",
                      "%1: its content does not fit its name. Put it back from a backup or an archive."),
    QT_TRANSLATE_NOOP("Core", "%1 (%2)"),
    QT_TRANSLATE_NOOP("Core", "%1, %2 tracer"),
    QT_TRANSLATE_NOOP("Core", "blade %1"),
    QT_TRANSLATE_NOOP("Core", "receptacle %1"),
    QT_TRANSLATE_NOOP("Core", "bullet %1"),
    QT_TRANSLATE_NOOP("Core", "bullet socket %1"),
    QT_TRANSLATE_NOOP("Core", "ring %1"),
    QT_TRANSLATE_NOOP("Core", "fork %1"),
    QT_TRANSLATE_NOOP("Core", "pin %1"),
    QT_TRANSLATE_NOOP("Core", "socket %1"),
    QT_TRANSLATE_NOOP("Core", "splice %1"),
    QT_TRANSLATE_NOOP("Core", "bare %1"),
    QT_TRANSLATE_NOOP("Core", "%1 min"),
};

} // namespace

Sentences shopSentences() {
    return all;
}

} // namespace undercowl::ui
