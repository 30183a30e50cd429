// What a page offers in its head: a button there, or a line behind the button for more; see PageHeader.
//
//   text, iconName, filled   see IconButton
//   offered                  whether it is there
//   stays                    ends what is under way: it gives its place to nothing
//   triggered()
import QtQuick

QtObject {
    property string text: ""
    property string iconName: ""
    property bool filled: false
    property bool offered: true
    property bool stays: false

    signal triggered
}
