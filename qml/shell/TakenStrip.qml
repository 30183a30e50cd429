// Photos side by side, newest first.
import QtQuick
import Undercowl
import Undercowl.Style

ListView {
    id: root

    required property LineModel photos

    boundsBehavior: Flickable.StopAtBounds
    clip: true
    height: Theme.liftMain + Theme.asideSize * 3 + Theme.grid
    model: photos
    orientation: ListView.Horizontal
    spacing: Theme.grid * 2

    delegate: Column {
        id: cell

        required property string title
        required property string aside
        required property url picture

        spacing: Theme.grid
        width: Theme.liftMain * 3 / 2

        PhotoFrame {
            description: cell.title
            enlarges: true
            height: Theme.liftMain
            source: cell.picture
            width: parent.width
        }

        Label {
            elide: Text.ElideRight
            fontSizeMode: Text.Fit // large words become smaller before they are cut
            height: Theme.asideSize * 3
            kind: Label.Aside
            minimumPixelSize: Math.round(Theme.asideSize / Theme.textScale)
            text: cell.title
            tone: Theme.quiet
            width: parent.width
        }
    }
}
