// A photo is shown as large as the window by one tap, and every way closer is a tap.
import QtQuick
import QtQuick.Templates as T
import QtTest
import Undercowl.Style

TestCase {
    id: test

    height: 640
    name: "Photo"
    visible: true
    when: windowShown
    width: 360

    PhotoFrame {
        id: frame

        enlarges: true
        height: 200
        source: "qrc:/undercowl/icons/camera.svg"
        width: 300
    }

    function buttonIn(item: var, words: string): var {
        if (item.text === words && item.triggered !== undefined)
            return item;
        for (const child of item.children) {
            const found = buttonIn(child, words);
            if (found !== null)
                return found;
        }
        return null;
    }

    function test_a_tap_shows_it_large_and_closer() {
        tryCompare(frame, "ready", true);
        const overlay = T.Overlay.overlay;
        mouseClick(frame);
        tryVerify(() => buttonIn(overlay, "Close") !== null);
        const closer = buttonIn(overlay, "Closer");
        const whole = buttonIn(overlay, "Whole");
        compare(whole.enabled, false);
        mouseClick(closer);
        compare(whole.enabled, true);
        wait(Theme.tapGuard);
        mouseClick(whole);
        compare(whole.enabled, false);
        mouseClick(buttonIn(overlay, "Close"));
        tryVerify(() => buttonIn(overlay, "Close") === null);
    }

    function test_where_a_tap_means_a_place_nothing_opens() {
        frame.enlarges = false;
        const overlay = T.Overlay.overlay;
        mouseClick(frame);
        wait(100);
        compare(buttonIn(overlay, "Close"), null);
        frame.enlarges = true;
    }
}
