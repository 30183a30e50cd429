// The app: one window, a stack of pages, the line that offers undo, and what went wrong.
// Qt 6.4 cannot bind a component to the ids around it, knows neither types of another library nor Qt.callLater:
// qmllint disable unqualified type
import QtQuick
import QtQuick.Templates as T
import Undercowl
import Undercowl.Style

AppWindow {
    id: root

    required property ShopSession session
    required property Camera camera
    property Level level
    property Speaker speaker
    property Listener listener
    property Recorder recorder
    property Player player
    property DeviceScreen deviceScreen
    property Signaller signaller
    property ShopSwitch shops
    property string pictures: ""
    // A page that needs nobody to have named himself, nor a shop that can be opened.
    readonly property bool anyone: (stack.currentItem as ShopPage)?.anyone ?? false

    function show(page: string, properties: var) {
        const all = properties ?? {};
        all.session = session;
        // Only the window knows the device.
        if (page === "CameraPage" || page === "ScanPage") {
            all.camera = camera;
            all.pictures = pictures;
        }
        if (page === "CameraPage")
            all.level = level;
        if (page === "RestorePage")
            all.shops = shops;
        all.speaker = speaker;
        all.listener = listener;
        all.recorder = recorder;
        all.player = player;
        const item = stack.push("qrc:/qt/qml/Undercowl/" + page + ".qml", all, T.StackView.Immediate) as ShopPage;
        if (item === null)
            return;
        item.opens.connect(root.show);
        item.leaves.connect(root.leave);
        item.covered = Qt.binding(() => undo.shown);
        item.refuses.connect(() => edge.refuse(root.speaker !== null));
        item.forceActiveFocus();
    }

    // What is chosen in a list takes the place of the detail beside it.
    function swap(page: string, properties: var) {
        if (stack.depth > 1)
            leave();
        show(page, properties);
    }

    function back() {
        const page = stack.currentItem as ShopPage;
        if (page !== null)
            page.back();
    }

    function leave() {
        const page = stack.currentItem as ShopPage;
        if (page !== null)
            page.leaving();
        session.flush();
        if (stack.depth > 1)
            stack.pop(T.StackView.Immediate);
    }

    height: 800
    minimumHeight: 480
    minimumWidth: 320
    title: qsTr("Undercowl")
    visible: true
    width: 420

    Component.onCompleted: {
        Theme.leftHanded = Qt.binding(() => settings.leftHanded);
        Theme.reduceMotion = Qt.binding(() => settings.calm);
        Glass.dimAfter = Qt.binding(() => settings.dimAfter);
    }
    onClosing: session.flush()

    ShopSettings {
        id: settings

        session: root.session
    }

    Binding {
        property: "theme"
        target: root
        value: settings.theme
        when: settings.theme !== ""
    }

    Binding {
        property: "textScale"
        target: root
        value: settings.textScale
        when: settings.textScale > 1
    }

    Binding {
        property: "awake"
        target: root.deviceScreen
        // On the list of jobs the phone may sleep as ever.
        value: settings.staysOn && stack.depth > 1 && root.session.jobId !== "" && Qt.application.active
        when: root.deviceScreen !== null
    }

    T.StackView {
        id: stack

        anchors.bottom: problem.top
        anchors.top: parent.top
        enabled: root.session.state !== ShopSession.NoMechanic || root.anyone // no key gets behind the question
        focus: true
        initialItem: HomePage {
            session: root.session

            onOpens: (page, properties) => root.show(page, properties)
        }
        width: parent.width - side.width
        x: Theme.leftHanded ? 0 : side.width
        popExit: Transition {} // with no transition at all, Qt 6.4 keeps every page that was left

        Keys.onBackPressed: root.back()
        Keys.onEscapePressed: root.back()
    }

    Loader {
        id: side

        readonly property string wanted: Theme.split ? (stack.currentItem as ShopPage)?.listPage ?? "" : ""
        property string shown: ""

        // Not at once: the list that a touch comes from is not to go within that touch.
        function follow() {
            if (wanted === shown)
                return;
            shown = wanted;
            if (wanted === "")
                source = "";
            else
                setSource("qrc:/qt/qml/Undercowl/" + wanted + ".qml", {
                    "aList": true,
                    "canGoBack": false,
                    "session": root.session
                });
        }

        anchors.bottom: problem.top
        anchors.top: parent.top
        width: shown === "" ? 0 : Theme.listWidth
        x: Theme.leftHanded ? parent.width - width : 0

        onLoaded: {
            const page = item as ShopPage;
            page.opens.connect(root.swap);
            page.leaves.connect(root.leave);
        }
        onWantedChanged: Qt.callLater(follow)

        Rectangle {
            color: Theme.line
            height: parent.height
            visible: side.shown !== ""
            width: Theme.hairline
            x: Theme.leftHanded ? 0 : parent.width - width
        }
    }

    ProblemPanel {
        id: problem

        anchors.bottom: parent.bottom
        bringsBack: !root.anyone
        session: root.session
        width: parent.width

        onOpens: (page, properties) => root.show(page, properties)
    }

    UndoLine {
        id: undo

        // Nothing is placed at the start, when there is nothing to say yet.
        readonly property rect room: used ? (stack.currentItem as ShopPage)?.titleRoom ?? Qt.rect(0, 0, 0, 0) : Qt.rect(0, 0, 0, 0)

        height: Math.max(room.height, implicitHeight)
        lift: used && ((stack.currentItem as ShopPage)?.lift ?? false)
        session: root.session
        spare: used ? (stack.currentItem as ShopPage)?.spareRoom ?? 0 : 0
        width: room.width
        x: stack.x + room.x
        y: room.y
    }

    EdgeSignals {
        id: edge

        anchors.fill: parent
        audible: settings.sounds
        handsFree: settings.handsFree
        listener: root.listener
        recorder: root.recorder
        session: root.session
        signaller: root.signaller
        z: 1
    }

    Loader {
        id: firstStart

        readonly property bool wanted: root.session.state === ShopSession.NoMechanic

        anchors.fill: parent
        visible: !root.anyone // what was typed stays

        onLoaded: item.opens.connect(root.show)

        // By its file, which is then no part of every other start.
        onWantedChanged: {
            if (wanted)
                setSource("FirstStart.qml", {
                    "session": root.session
                });
            else
                source = "";
        }
    }
}
