// The app: one window, a stack of pages, the line that offers undo, and what went wrong.
// Qt 6.4 cannot bind a component to the ids around it:
// qmllint disable unqualified
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
    property string pictures: ""

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
        all.speaker = speaker;
        all.listener = listener;
        all.recorder = recorder;
        all.player = player;
        const item = stack.push("qrc:/qt/qml/Undercowl/" + page + ".qml", all, T.StackView.Immediate) as ShopPage;
        if (item === null)
            return;
        item.opens.connect(root.show);
        item.leaves.connect(root.leave);
        item.forceActiveFocus();
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

    T.StackView {
        id: stack

        anchors.bottom: problem.top
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        focus: true
        initialItem: HomePage {
            session: root.session

            onOpens: (page, properties) => root.show(page, properties)
        }
        popExit: Transition {} // with no transition at all, Qt 6.4 keeps every page that was left

        Keys.onBackPressed: root.leave()
        Keys.onEscapePressed: root.leave()
    }

    ProblemPanel {
        id: problem

        anchors.bottom: undo.top
        session: root.session
        width: parent.width
    }

    UndoLine {
        id: undo

        anchors.bottom: parent.bottom
        session: root.session
        width: parent.width
    }

    Loader {
        active: root.session.state === ShopSession.NoMechanic
        anchors.fill: parent

        sourceComponent: FirstStart {
            session: root.session
        }
    }
}
