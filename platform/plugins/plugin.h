// Parts of the program that are loaded when they are first wanted: what they need (image and media libraries)
// would hold up the first frame, and most days begin with a look at the list of jobs.
#pragma once

#include <QObject>
#include <QString>

namespace undercowl::platform {

// The one object of a plugin, made at the first call and kept until the program ends; null with `problem` in
// words where the plugin is missing or damaged. Plugins lie beside the program's other libraries, or are
// linked in where a system wants programs in one piece. Any thread; an object that is a QObject's child or
// has a thread of its own is for the plugin to say.
//
// name: "eye" for undercowl_eye
[[nodiscard]] QObject* plugin(const QString& name, QString& problem);

// The same, seen as what it offers. Interface is declared by Q_DECLARE_INTERFACE.
template<class Interface>
[[nodiscard]] Interface* pluginFor(const QString& name, QString& problem) {
    auto* offered = qobject_cast<Interface*>(plugin(name, problem));
    if (offered == nullptr && problem.isEmpty())
        problem = QStringLiteral("undercowl_%1: made for another version of this program").arg(name);
    return offered;
}

// Reads the plugin's libraries into memory without making its object, so that the first use does not wait for
// the disk. Any thread; says nothing when it fails, whoever wants the plugin is told.
void warmPlugin(const QString& name);

} // namespace undercowl::platform
