// Taking photos: opens straight into the picture; where there is no camera, into the pictures on the device. The shutter is the
// button, the voice, and any of the keys that a phone or a remote has for it.
// Qt 6.4 knows no members of a list, nor of a type from another library:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    required property Camera camera
    property Level level
    required property string jobId
    property string pictures: ""
    property string purpose: "other"
    property string about: ""
    property string note: "" // kept with each photo: the view that it shows
    property bool wires: purpose === "wiring" // the photo is to be read for the colours of wires
    property bool once: false // the page is left with the first photo
    property string last: "" // the photo kept last, which a note would be about

    function shoot() {
        if (shot.ready)
            shot.shoot();
        else
            talk.ear.refuse(shot.busy ? qsTr("The photo before is still being saved. Say it again.") : shot.stateWords);
    }

    function addNote(recording: bool) {
        if (last === "")
            talk.ear.refuse(qsTr("Take a photo first; then a memo to it can be kept."));
        else
            root.opens("MemoPage", {
                "about": root.last,
                "ofPhoto": true,
                "recording": recording,
                "machine": root.title
            });
    }

    function takesKey(key: int): bool {
        return [Qt.Key_VolumeUp, Qt.Key_VolumeDown, Qt.Key_Camera, Qt.Key_Space, Qt.Key_Return, Qt.Key_Enter].includes(key);
    }

    canGoBack: true
    lift: true
    footer: [
        CaptureFooter {
            camera: root.camera
            capture: shot
            width: parent.width

            onFinished: root.leaves()
            onNoted: root.addNote(false)
        },
        TalkBar {
            id: talk

            commands: ({
                    "photo": () => root.shoot(),
                    "memo": () => root.addNote(true),
                    "done": () => root.leaves(),
                    "back": () => root.leaves(),
                    "undo": () => talk.undo()
                })
            page: root
            wanted: shot.hasCamera
            width: parent.width
        }
    ]

    Keys.onPressed: event => {
        if (!shot.hasCamera)
            return;
        if (event.key === Qt.Key_CameraFocus) // the shutter key, pressed halfway
            picture.focusOn(Qt.point(picture.width / 2, picture.height / 2));
        else if (!root.takesKey(event.key))
            return;
        else if (!event.isAutoRepeat)
            shot.shoot();
        event.accepted = true;
    }

    PhotoCapture {
        id: shot

        about: root.about
        active: root.visible
        camera: root.camera
        jobId: root.jobId
        note: root.note
        purpose: root.purpose
        session: root.session

        onKept: id => {
            root.last = id;
            if (root.once)
                root.leaves();
        }
    }

    CameraHints {
        id: hints

        active: root.visible && shot.live
        camera: root.camera
        level: root.level
        wires: root.wires
    }

    CameraPicture {
        id: picture

        camera: root.camera
        // In a small window the photos taken only peep in below: the next one has to be aimed.
        height: Math.max(leastHeight, Math.min(width * 4 / 3, root.scroller.height - 2 * Theme.margin - (shot.taken.count === 0 ? 0 : Theme.roomy ? Theme.liftMain * 1.5 : Theme.liftMain / 2)))
        hints: hints
        level: root.level
        visible: shot.hasCamera
        width: parent.width
    }

    Label {
        text: shot.stateWords
        tone: Theme.quiet
        visible: text !== ""
        width: parent.width
    }

    TakenStrip {
        photos: shot.taken
        visible: shot.taken.count > 0
        width: parent.width
    }

    PicturePicker {
        start: root.pictures
        visible: !shot.hasCamera
        width: parent.width

        onChosen: file => shot.keepFile(file)
    }
}
