// What the window tells without words, for whoever looks at the machine: at its edge, and by short tones.
//
//   audible    tones are wanted
//   handsFree  a microphone that opens by itself would take the tone for speech: it is seen alone
//   refuse()   something was not taken; spoken: a voice says so already
// Qt 6.4 knows no members of a type from another library, cannot bind a component to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Item {
    id: root

    required property ShopSession session
    property Listener listener
    property Recorder recorder
    property Signaller signaller
    property bool audible: false
    property bool handsFree: false

    readonly property bool recording: recorder !== null && recorder.state === Recorder.Recording
    readonly property string heard: listener === null ? "" : listener.state === Listener.Listening ? "listening"
                                                           : listener.state === Listener.Waiting ? "waiting" : ""
    readonly property string sound: recording ? "recording" : heard
    readonly property string problem: session.problem
    property string told: ""
    property int saved: 0 // that were told

    function refuse(spoken: bool) {
        tell("refused");
        if (!spoken)
            give(Signaller.Refused);
    }

    function tell(what: string) {
        told = what;
        patience.restart();
    }

    function give(what: int) {
        // No tone gets into what is being said.
        if (audible && signaller !== null && (sound === "" || sound === "waiting"))
            signaller.give(what);
    }

    Component.onCompleted: saved = session.savedCount
    onProblemChanged: {
        if (problem !== "")
            refuse(false);
    }
    onSoundChanged: {
        if (!audible || signaller === null)
            return;
        if (sound === "recording")
            signaller.give(Signaller.Recording);
        else if (sound === "listening" && !handsFree)
            signaller.give(Signaller.Listening);
    }

    Connections {
        function onSavingChanged() {
            if (root.session.savedCount === root.saved)
                return;
            root.saved = root.session.savedCount;
            root.tell("saved");
            root.give(Signaller.Saved);
        }

        target: root.session
    }

    Timer {
        id: patience

        interval: Theme.tellTime

        onTriggered: root.told = ""
    }

    Loader {
        active: root.sound !== "" || root.told !== "" || Glass.locked
        anchors.fill: parent

        sourceComponent: EdgeStrip {
            locked: Glass.locked
            sound: root.sound
            told: root.told
        }
    }
}
