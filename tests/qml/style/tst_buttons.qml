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

    Settle {
        id: next

        about: 1
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
            keep.settle = null;
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

        // What it acts on has changed, and nobody can have seen that yet.
        function unsettle() {
            keep.settle = next;
            ++next.about;
            verify(keep.settling);
        }

        function test_what_has_just_changed_takes_no_touch() {
            verify(Theme.settle > 2 * Theme.tapGuard);
            unsettle();
            tap();
            compare(spy.count, 0);
            verify(keep.opacity < 1);
            tryVerify(() => !keep.settling);
            compare(keep.opacity, 1);
            tap();
            compare(spy.count, 1);
        }

        function test_nor_a_key_nor_a_reader() {
            keep.forceActiveFocus();
            unsettle();
            keyClick(Qt.Key_Return);
            keyClick(Qt.Key_Space);
            keep.Accessible.pressAction();
            compare(spy.count, 0);
            tryVerify(() => !keep.settling);
            keyClick(Qt.Key_Return);
            compare(spy.count, 1);
        }

        // Pressed before it could be seen, let go after: meant for what was there before.
        function test_a_press_that_came_too_early_counts_for_nothing() {
            unsettle();
            const touch = touchEvent(keep);
            touch.press(1, keep).commit();
            tryVerify(() => !keep.settling);
            touch.release(1, keep).commit();
            compare(spy.count, 0);
            tap();
            compare(spy.count, 1);
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
