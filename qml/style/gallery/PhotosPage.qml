// Photos: with rings, none yet, one that cannot be read; in the rows of a list; and the ring by itself.
import QtQuick
import Undercowl.Style

Scroller {
    id: root

    Rectangle {
        color: Theme.sleeve
        height: picture.height
        width: parent.width

        PhotoFrame {
            id: picture

            crop: false
            description: "Photo of this step"
            enlarges: true
            height: Theme.liftMain * 2
            marks: [
                {
                    "x": 0.3,
                    "y": 0.5,
                    "label": "1"
                },
                {
                    "x": 0.7,
                    "y": 0.6,
                    "label": "2"
                }
            ]
            source: "qrc:/undercowl/icons/connector.svg"
            width: parent.width
        }
    }

    PhotoFrame {
        height: Theme.liftMain
        width: parent.width
    }

    PhotoFrame {
        height: Theme.liftMain
        source: "qrc:/undercowl/none-such.jpg"
        width: parent.width
    }

    ListRow {
        done: true
        picture: "qrc:/undercowl/icons/connector.svg"
        title: "Unplug the connector"
        width: parent.width
    }

    ListRow {
        picture: "qrc:/undercowl/none-such.jpg"
        title: "Left grip"
        width: parent.width
    }

    PhotoMark {
        label: "7"
    }
}
