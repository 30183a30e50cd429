// A photo, loaded off the touch thread, with marks at places of the photo.
//
//   source     where it lies
//   zoom       1 shows as much as `crop` allows; more shows the part round `centre`
//   centre     in parts of the photo, 0 to 1
//   crop       fills the frame instead of showing all
//   enlarges   a tap shows it as large as the window, with buttons to go closer
//   marks      list of { x, y, label }, in parts of the photo
//   ground     what lies around the frame, for its rounded corners
//   ready, failed
//   wholeWidth   of the picture at a zoom of 1
//   tapped(x, y)   in parts of the photo
//   toItem(x, y), toPhoto(x, y)
// Qt 6.4 cannot bind a delegate to the ids around it, nor defer an item that has one:
// qmllint disable unqualified deferred-property-id
import QtQuick
import QtQuick.Templates as T
import Undercowl.Style

Item {
    id: root

    property url source
    property real zoom: 1
    property point centre: Qt.point(0.5, 0.5)
    property bool crop: true
    property bool enlarges: false
    property var marks: []
    property color ground: Theme.ground
    property string description: qsTr("Photo")

    readonly property bool ready: picture.status === Image.Ready
    readonly property bool failed: picture.status === Image.Error
    readonly property real wholeWidth: picture.byWidth ? width : height * picture.ratio

    signal tapped(x: real, y: real)

    function toItem(x: real, y: real): point {
        return Qt.point(picture.x + x * picture.width, picture.y + y * picture.height);
    }

    function toPhoto(x: real, y: real): point {
        return Qt.point((x - picture.x) / picture.width, (y - picture.y) / picture.height);
    }

    Accessible.name: description
    Accessible.role: Accessible.Graphic
    clip: true
    implicitHeight: width * 3 / 4
    implicitWidth: Theme.liftKeyWidth * 3

    Rectangle {
        anchors.fill: parent
        color: Theme.panel
    }

    Image {
        id: picture

        readonly property real ratio: implicitWidth > 0 && implicitHeight > 0 ? implicitWidth / implicitHeight : 1
        readonly property bool byWidth: root.crop === (root.width / Math.max(1, root.height) > ratio)

        // The wanted place in the middle, but no bare ground where the photo could reach.
        function place(room: real, size: real, part: real): real {
            return size <= room ? (room - size) / 2 : Math.min(0, Math.max(room - size, room / 2 - part * size));
        }

        asynchronous: true
        autoTransform: true
        cache: false
        height: root.wholeWidth / ratio * Math.max(1, root.zoom)
        source: root.source
        width: root.wholeWidth * Math.max(1, root.zoom)
        x: place(root.width, width, root.centre.x)
        y: place(root.height, height, root.centre.y)
    }

    Label {
        anchors.centerIn: parent
        horizontalAlignment: Text.AlignHCenter
        text: root.failed ? qsTr("This photo cannot be shown. Its file may be damaged.") : qsTr("Loading photo")
        tone: root.failed ? Theme.stop : Theme.quiet
        visible: root.failed || picture.status === Image.Loading
        width: parent.width - 2 * Theme.margin
    }

    TapHandler {
        onTapped: point => {
            if (!root.ready)
                return;
            const place = root.toPhoto(point.position.x, point.position.y);
            if (place.x >= 0 && place.x <= 1 && place.y >= 0 && place.y <= 1)
                root.tapped(place.x, place.y);
            if (root.enlarges)
                viewer.show();
        }
    }

    Loader {
        id: viewer

        // By its address: a viewer is made of a frame again.
        function show() {
            setSource("PhotoViewer.qml", {
                "description": root.description,
                "marks": root.marks,
                "source": root.source
            });
        }

        onLoaded: {
            const large = item as T.Popup;
            large.closed.connect(() => Qt.callLater(() => viewer.source = ""));
            large.open();
        }
    }

    Repeater {
        model: root.ready ? root.marks : []

        PhotoMark {
            required property var modelData

            label: modelData.label ?? ""
            x: picture.x + modelData.x * picture.width - width / 2
            y: picture.y + modelData.y * picture.height - height / 2
        }
    }

    RoundedMask {
        anchors.fill: parent
        color: root.ground
        radius: Theme.corner
    }
}
