import QtQuick
import QtTest
import Undercowl.Style

Item {
    height: 640
    width: 360

    Snackbar {
        id: snackbar

        width: 336
    }

    SignalSpy {
        id: spy

        signalName: "undoRequested"
        target: snackbar
    }

    TestCase {
        name: "Snackbar"
        when: windowShown

        function init() {
            snackbar.nextAction();
            spy.clear();
        }

        function test_undo_goes_back_one_by_one() {
            snackbar.show("Step 3 kept", "three");
            snackbar.show("Step 4 kept", "four");
            compare(snackbar.message, "Step 4 kept");
            mouseClick(snackbar, snackbar.width - 30, snackbar.height / 2);
            compare(spy.signalArguments[0][0], "four");
            compare(snackbar.message, "Step 3 kept");
            wait(Theme.tapGuard + 50);
            mouseClick(snackbar, snackbar.width - 30, snackbar.height / 2);
            compare(spy.signalArguments[1][0], "three");
            verify(!snackbar.visible);
        }

        function test_stays_until_the_next_action() {
            snackbar.show("Step 3 kept", "three");
            wait(1000);
            verify(snackbar.visible);
            verify(Theme.undoTime >= 8000);
            snackbar.nextAction();
            verify(!snackbar.visible);
        }
    }
}
