// A screen at the lift by voice: the large button that is held while speaking with what was heard beside it, and reading
// aloud. One for all screens, in the page's voiceSlot. It is there while the mechanic wants to speak, or something is read
// aloud.
//
//   page        whose screen it is
//   commands    what may be said, each with what it does: {"done": () => view.done()}. 'again' and 'slower' are for the voice
//               where they are not named.
//   settle      what "done" and "does not match" act on: just after another came up they were meant for the one before
//   values      what else may be said: "reading", "bag", "wire"; see the signals
//   sentence    what is read aloud while 'aloud', as soon as it changes;  brief: the part of it that matters most
//   takesBack   what was heard is only in what is being entered: it can be taken back here, by "undo". What is saved is
//               undone where the window says that it was saved.
//   sayBack     commands are said back
//   wanted      false while the screen shows something that is not for the voice
//   unseen      a keypad needs all the room: what is heard without a touch is still obeyed
//   hushed      the buttons for hearing it again have gone: the room is needed
//   tall        the button is as high as there is room for: it stands in the place of a keypad
//   reading(what, digits, unit), bag(number), wire(...)   see LiftEar
//   ear         for refusing and remarking within these
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property ShopPage page
    property var commands: ({})
    property list<string> values: []
    property Settle settle: null
    property bool aloud: false
    property string sentence: ""
    property string brief: ""
    property string briefly: ""
    property string brieflyDescription: ""
    property bool unseen: false
    property bool hushed: false
    property bool tall: false
    property bool takesBack: false
    property bool wanted: true
    property bool sayBack: !aloud
    property alias ear: ear

    readonly property bool speaks: settings.voice
    readonly property bool open: wanted && (aloud || (speaks || settings.handsFree) && page.listener !== null)
    readonly property string told: ear.told
    readonly property string heard: ear.heard

    signal reading(what: string, digits: string, unit: string)
    signal bag(number: int)
    signal wire(base: string, tracer: string, terminal: string, size: string, purpose: string)

    function obey(name: string) {
        const confirms = name === "done" || name === "does not match";
        if (confirms && settle !== null && settle.running)
            ear.refuse(qsTr("This one has only just come up. Look at it, then say it again."));
        else if (commands[name] !== undefined)
            commands[name]();
        else if (name === "again")
            again();
        else if (name === "slower")
            slower();
    }

    function again() {
        if (aloud && sentence !== "")
            voice.say(sentence);
        else
            ear.sayAgain();
    }

    // Of what is saved. Whoever does not look at the screen is told when there was nothing.
    function undo() {
        if (page.session.takeBackText === "")
            ear.refuse(qsTr("There is nothing to undo."));
        else
            page.session.takeBack();
    }

    function slower() {
        settings.slowness = settings.slowness >= 0.9 ? 0 : settings.slowness + 0.3;
        again();
    }

    parent: page.voiceSlot
    spacing: Theme.targetGap
    visible: open && !unseen

    onHeardChanged: Glass.stir()
    onToldChanged: {
        Glass.stir();
        if (told !== "")
            page.refuses();
    }

    Voice {
        id: voice

        sentence: root.aloud ? root.sentence : ""
        slowness: settings.slowness
        speaker: root.page.speaker
    }

    LiftEar {
        id: ear

        active: root.open && root.page.visible
        handsFree: settings.handsFree
        listener: root.page.listener
        sayBack: root.sayBack
        takes: Object.keys(root.commands).concat(["again", "slower"].filter(name => root.commands[name] === undefined)).concat(root.values)
        voice: voice

        onBag: number => root.bag(number)
        onCommanded: name => root.obey(name)
        onReading: (what, digits, unit) => root.reading(what, digits, unit)
        onWire: (base, tracer, terminal, size, purpose) => root.wire(base, tracer, terminal, size, purpose)
    }

    ShopSettings {
        id: settings

        session: root.page.session
    }

    TalkAloud {
        briefly: root.briefly
        brieflyDescription: root.brieflyDescription
        visible: root.aloud && !root.hushed
        width: parent.width

        onAgain: root.again()
        onBrief: voice.say(root.brief)
        onSlower: root.slower()
    }

    Row {
        id: line

        layoutDirection: Theme.leftHanded ? Qt.LeftToRight : Qt.RightToLeft
        spacing: Theme.targetGap
        width: parent.width

        ActionButton {
            id: button

            busy: ear.thinking
            busyText: qsTr("Hearing")
            description: qsTr("While it is held, say: %1").arg(ear.takes.join(", "))
            height: root.tall ? Theme.liftKey * 3 : Math.max(Theme.liftOther, implicitContentHeight + topPadding + bottomPadding)
            iconName: "memo"
            kind: ear.listening ? ActionButton.Refuse : ActionButton.Other
            lift: true
            text: ear.listening ? qsTr("Listening") : qsTr("Hold and speak")
            throughLock: true
            visible: root.page.listener !== null
            // All the room there is, until there is something to say beside it.
            width: said.visible ? Theme.liftKeyWidth * 1.2 : line.width

            onDownChanged: {
                if (down)
                    ear.press();
                else
                    ear.release();
            }
        }

        TalkHeard {
            id: said

            anchors.verticalCenter: parent.verticalCenter
            ear: ear
            handsFree: settings.handsFree
            problem: voice.problem
            undoable: root.takesBack
            width: line.width - (button.visible ? button.width + line.spacing : 0)

            onUndo: root.obey("undo")
        }
    }
}
