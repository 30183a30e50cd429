// The settings that matter: how it looks, which hand, who works here.
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    readonly property list<string> themes: ["night", "day", "sun"]
    readonly property list<real> scales: [1, 1.25, 1.5, 2]
    readonly property list<real> waits: [0, 1, 2, 5]
    readonly property list<real> paces: [0, 0.3, 0.6, 0.9]

    title: qsTr("Settings")

    ShopSettings {
        id: settings

        session: root.session
    }

    Choice {
        current: root.themes.indexOf(Theme.mode)
        label: qsTr("Light")
        options: [qsTr("Night"), qsTr("Day"), qsTr("Sun")]
        width: parent.width

        onChosen: index => settings.theme = root.themes[index]
    }

    Choice {
        current: settings.language
        label: qsTr("Language")
        options: settings.languages
        width: parent.width

        onChosen: index => settings.language = index
    }

    Label {
        kind: Label.Aside
        text: qsTr("The voice of a Linux device, and what is spoken to it, are English.")
        visible: !settings.english
        width: parent.width
    }

    Choice {
        current: root.scales.indexOf(settings.textScale)
        label: qsTr("Size of the text")
        options: ["100 %", "125 %", "150 %", "200 %"]
        width: parent.width

        onChosen: index => settings.textScale = root.scales[index]
    }

    Choice {
        current: settings.leftHanded ? 1 : 0
        label: qsTr("Hand that holds the phone")
        options: [qsTr("Right"), qsTr("Left")]
        width: parent.width

        onChosen: index => settings.leftHanded = index === 1
    }

    Choice {
        current: settings.staysOn ? 0 : 1
        label: qsTr("The screen, while a job is open")
        options: [qsTr("Stays on"), qsTr("As the device")]
        width: parent.width

        onChosen: index => settings.staysOn = index === 0
    }

    Choice {
        current: root.waits.indexOf(settings.dimAfter)
        label: qsTr("It dims without a touch. The touch that wakes it does nothing else.")
        options: [qsTr("Never"), qsTr("After 1 min"), qsTr("After 2 min"), qsTr("After 5 min")]
        width: parent.width

        onChosen: index => settings.dimAfter = root.waits[index]
    }

    Choice {
        current: settings.sounds ? 1 : 0
        label: qsTr("Short tones for listening, recording, saved, refused")
        options: [qsTr("Off"), qsTr("On")]
        width: parent.width

        onChosen: index => settings.sounds = index === 1
    }

    Choice {
        current: settings.vision
        label: qsTr("How you see colours")
        options: [qsTr("As most do"), qsTr("Red weak"), qsTr("Green weak"), qsTr("Blue weak")]
        width: parent.width

        onChosen: index => settings.vision = index
    }

    Choice {
        current: settings.slightVision ? 0 : 1
        label: qsTr("How much")
        options: [qsTr("A little"), qsTr("Much")]
        visible: settings.vision > 0
        width: parent.width

        onChosen: index => settings.slightVision = index === 0
    }

    Choice {
        current: settings.calm ? 1 : 0
        label: qsTr("Movement on the screen")
        options: [qsTr("Some"), qsTr("None")]
        width: parent.width

        onChosen: index => settings.calm = index === 1
    }

    Choice {
        current: settings.voice ? 1 : 0
        label: qsTr("Button to hold for speaking, at the lift (English)")
        options: [qsTr("Hidden"), qsTr("Shown")]
        width: parent.width

        onChosen: index => settings.voice = index === 1
    }

    Choice {
        current: settings.handsFree ? 1 : 0
        label: qsTr("Hands-free, after \"turquoise battery\" (English). The microphone is then open while a screen at the lift is shown.")
        options: [qsTr("Off"), qsTr("On")]
        width: parent.width

        onChosen: index => settings.handsFree = index === 1
    }

    Choice {
        current: root.paces.findIndex(pace => Math.abs(pace - settings.slowness) < 0.01)
        label: qsTr("Pace of the voice that reads aloud")
        options: [qsTr("Usual"), qsTr("Slower"), qsTr("Slow"), qsTr("Slowest")]
        width: parent.width

        onChosen: index => {
            settings.slowness = root.paces[index];
            sample.say("place three, green with white tracer, torque nine point three newton metres");
        }
    }

    Choice {
        current: settings.memoEndsBySilence ? 1 : 0
        label: qsTr("A spoken memo ends")
        options: [qsTr("By a touch"), qsTr("By silence too")]
        width: parent.width

        onChosen: index => settings.memoEndsBySilence = index === 1
    }

    Voice {
        id: sample

        slowness: settings.slowness
        speaker: root.speaker
    }

    Choice {
        current: settings.keepsLocation ? 1 : 0
        label: qsTr("Where a photo was taken")
        options: [qsTr("Left out"), qsTr("Kept")]
        width: parent.width

        onChosen: index => settings.keepsLocation = index === 1
    }

    ActionButton {
        text: qsTr("The shop's instruments")
        width: parent.width

        onTriggered: root.opens("InstrumentsPage", {})
    }

    ActionButton {
        text: qsTr("The shop's lists of checks")
        width: parent.width

        onTriggered: root.opens("RoundListsPage", {})
    }

    ActionButton {
        text: qsTr("Backup")
        width: parent.width

        onTriggered: root.opens("BackupPage", {})
    }

    TextEntry {
        id: name

        label: qsTr("Who works here")
        value: root.session.mechanicName
        width: parent.width
    }

    ActionButton {
        enabled: name.text.trim() !== "" && name.text.trim() !== root.session.mechanicName
        text: qsTr("Work as %1").arg(name.text.trim())
        width: parent.width

        onTriggered: root.session.nameMechanic(name.commit())
    }
}
