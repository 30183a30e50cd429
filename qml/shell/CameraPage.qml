// Taking photos: opens straight into the picture; where there is no camera, into the pictures on the device.
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    required property Camera camera
    required property string jobId
    property string pictures: ""
    property string purpose: "other"
    property string about: ""
    property string note: "" // kept with each photo: the view that it shows
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

    canGoBack: true
    footer: [
        CaptureFooter {
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
                    "undo": () => root.session.undoLast()
                })
            page: root
            wanted: shot.hasCamera
            width: parent.width
        }
    ]

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

    CameraView {
        camera: root.camera
        height: Math.max(Theme.liftMain, Math.min(width * 4 / 3, root.scroller.height - 2 * Theme.margin - (shot.taken.count > 0 ? Theme.liftMain * 1.5 : 0)))
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
