// Actions side by side. The last of them, which is the main one, lies under the thumb of the hand that holds the phone.
import QtQuick
import Undercowl.Style

Row {
    layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
    spacing: Theme.targetGap
}
