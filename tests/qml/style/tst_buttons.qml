import QtQuick
import QtTest
import Undercowl.Style

Item {
    height: 640
    width: 360

    ActionButton {
        id: keep

        kind: ActionButton.Main
        lift: true
        text: "Keep"
        width: 336
    }

    SignalSpy {
        id: spy

        signalName: "triggered"
        target: keep
    }

    TestCase {
        name: "Buttons"
        when: windowShown

        function init() {
            keep.busy = false;
            wait(Theme.tapGuard + 50);
            spy.clear();
        }

        function tap() {
            const touch = touchEvent(keep);
            touch.press(1, keep).commit();
            touch.release(1, keep).commit();
        }

        function test_one_touch_is_one_action() {
            tap();
            compare(spy.count, 1);
        }

        function test_trembling_thumb_acts_once() {
            tap();
            tap();
            compare(spy.count, 1);
            wait(Theme.tapGuard + 50);
            tap();
            compare(spy.count, 2);
        }

        function test_busy_ignores_taps() {
            keep.busy = true;
            tap();
            compare(spy.count, 0);
        }

        function test_keyboard() {
            keep.forceActiveFocus();
            keyClick(Qt.Key_Return);
            compare(spy.count, 1);
            wait(Theme.tapGuard + 50);
            keyClick(Qt.Key_Space);
            compare(spy.count, 2);
        }
    }
}
