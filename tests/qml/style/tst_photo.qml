// A photo is shown as large as the window by one tap, and every way closer is a tap.
import QtQuick
import QtQuick.Templates as T
import QtTest
import Undercowl.Style

Item {
    id: root

    readonly property Item overlay: T.Overlay.overlay

    height: 640
    width: 360

    PhotoFrame {
        id: frame

        enlarges: true
        height: 200
        source: "qrc:/undercowl/icons/camera.svg"
        width: 300
    }

    TestCase {
        function buttonIn(item: var, words: string): var {
            if (item.text === words && item.triggered !== undefined)
                return item;
            for (let i = 0; i < item.children.length; ++i) {
                const child = item.children[i];
                const found = buttonIn(child, words);
                if (found !== null)
                    return found;
            }
            return null;
        }

        function test_a_tap_shows_it_large_and_closer() {
            tryCompare(frame, "ready", true);
            mouseClick(frame);
            tryVerify(() => buttonIn(root.overlay, "Close") !== null);
            const closer = buttonIn(root.overlay, "Closer");
            const whole = buttonIn(root.overlay, "Whole");
            compare(whole.enabled, false);
            wait(Application.styleHints.mouseDoubleClickInterval + 100); // no double click of two controls
            mouseClick(closer);
            compare(whole.enabled, true);
            mouseClick(whole);
            compare(whole.enabled, false);
            mouseClick(buttonIn(root.overlay, "Close"));
            tryVerify(() => buttonIn(root.overlay, "Close") === null);
        }

        function test_where_a_tap_means_a_place_nothing_opens() {
            frame.enlarges = false;
            mouseClick(frame);
            wait(100);
            compare(buttonIn(root.overlay, "Close"), null);
            frame.enlarges = true;
        }

        name: "Photo"
        when: windowShown
    }
}
