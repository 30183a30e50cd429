// What every button is made of: one tap is one action.
//
//   busy          the action is under way: further taps are ignored, and the control shows it
//   tapGuard      a second tap within so many milliseconds is ignored; 0 for keys that are typed fast
//   description   for screen readers, what happens
//   triggered()   use this instead of clicked(): guarded, from touch, mouse, keyboard or screen reader
import QtQuick
import QtQuick.Templates as T

T.AbstractButton {
    id: root

    property bool busy: false
    property int tapGuard: Theme.tapGuard
    property string description: ""
    property double lastTap: 0

    signal triggered

    function act() {
        // The clock may be set back meanwhile, which must not lock the button.
        const now = Date.now();
        if (busy || Math.abs(now - lastTap) < tapGuard)
            return;
        lastTap = now;
        triggered();
    }

    Accessible.description: busy ? qsTr("Working") : description
    Accessible.name: text
    Accessible.role: Accessible.Button
    activeFocusOnTab: true
    focusPolicy: Qt.StrongFocus
    hoverEnabled: true
    implicitHeight: Math.max(Theme.touch, implicitContentHeight + topPadding + bottomPadding)
    implicitWidth: Math.max(Theme.touch, implicitContentWidth + leftPadding + rightPadding)

    Accessible.onPressAction: root.act()
    Keys.onEnterPressed: root.act()
    Keys.onReturnPressed: root.act()
    onClicked: root.act()
}
