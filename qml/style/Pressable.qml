// What every button is made of: one tap is one action.
//
//   busy          the action is under way: further taps are ignored, and the control shows it
//   tapGuard      a second tap within so many milliseconds is ignored, see Glass; 0 for keys that are typed fast
//   settle        what it acts on may change by itself: while that has just happened it ignores touches, and is paler
//   throughLock   it works while the glass is locked; constant
//   description   for screen readers, what happens
//   triggered()   use this instead of clicked(): guarded, from touch, mouse, keyboard or screen reader
import QtQuick
import QtQuick.Templates as T
import Undercowl.Style

T.AbstractButton {
    id: root

    property bool busy: false
    property int tapGuard: Theme.tapGuard
    property Settle settle: null
    property bool throughLock: false
    property string description: ""

    readonly property bool settling: settle !== null && settle.running
    property bool early: false // pressed before it had settled: what was meant is what was there before

    signal triggered

    function act() {
        if (!busy && !settling && Glass.takes(root, tapGuard))
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
    opacity: settling ? Theme.unsettled : 1

    Accessible.onPressAction: root.act()
    // A key that is held down is one action.
    Keys.onEnterPressed: event => {
        if (!event.isAutoRepeat)
            root.act();
    }
    Keys.onReturnPressed: event => {
        if (!event.isAutoRepeat)
            root.act();
    }
    onClicked: {
        if (!early)
            act();
    }
    onPressedChanged: {
        if (pressed)
            early = settling;
    }
    onThroughLockChanged: Glass.letThrough(root)
}
