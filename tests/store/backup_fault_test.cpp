// Backups while the disk fails: one that is listed is whole, one that failed leaves nothing, and the shop is
// untouched.
#include "tests/store/faulty_disk.h"
#include "tests/store/long.h"
#include "tests/store/script.h"

#include "core/store/backup.h"

#include <SQLiteCpp/SQLiteCpp.h>

using namespace undercowl;
using namespace undercowl::store;
using namespace undercowl::store::test;

namespace {

std::string checked(const std::filesystem::path& database) {
    SQLite::Database copy(database.string(), SQLite::OPEN_READONLY);
    return copy.execAndGet("PRAGMA integrity_check").getString() + ", " +
           copy.execAndGet("SELECT count(*) FROM entry").getString();
}

} // namespace

TEST_CASE("backups survive a fault at every operation on the disk") {
    Folder folder(std::filesystem::exists("/dev/shm") ? "/dev/shm" : std::filesystem::temp_directory_path());
    const auto pattern = folder.path() / "pattern";
    const Id job = beginJob(pattern);
    {
        Store store = must(Store::open(pattern));
        Confirmed ignored;
        for (int turn = 1; turn < 13; ++turn) {
            REQUIRE_FALSE(Script(store, job, into(ignored)).act(turn));
        }
    }
    const std::string sound = checked(pattern / "shop.db");
    int injected = 0;
    for (int m = 0; m < mishaps; ++m) {
        const auto mishap = static_cast<Mishap>(m);
        const int stride = isLong() ? 1 : 23;
        for (int n = m;; n += stride) {
            INFO("mishap " << m << " at operation " << n);
            Folder place(folder.path());
            const auto shop = place.path() / "shop";
            std::filesystem::copy(pattern, shop, std::filesystem::copy_options::recursive);
            auto disk = std::make_shared<FaultyDisk>(static_cast<unsigned>(n));
            bool copied = false;
            bool written = false;
            {
                const Store store = must(Store::open(shop, systemClock(), disk));
                disk->failAt(n, mishap);
                copied = backUpDatabase(store).has_value();
                written = writeBackup(store, place.path() / "whole").has_value();
            }
            const bool happened = disk->happened();
            disk->restart();
            if (!happened) {
                CHECK((copied && written));
                break;
            }
            ++injected;
            const auto rolling = rollingBackups(shop);
            CHECK((!copied || rolling.size() == 1));
            for (const RollingBackup& one : rolling) {
                CHECK(checked(one.file) == sound);
            }
            if (written) {
                CHECK(verifyBackup(place.path() / "whole"));
            } else if (mishap != Mishap::PowerCut && mishap != Mishap::PowerTorn) {
                // A name may be on the medium although its folder could not be synced: then it is whole.
                CHECK((!std::filesystem::exists(place.path() / "whole") ||
                       verifyBackup(place.path() / "whole")));
            }
            CHECK(losses(shop, job, {}) == std::vector<std::string>{});
        }
    }
    WARN("backups: " << injected << " injected faults");
    CHECK(injected > 50);
}
