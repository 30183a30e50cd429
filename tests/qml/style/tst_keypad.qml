import QtQuick
import QtTest
import Undercowl.Style

Item {
    height: 640
    width: 360

    NumberEntry {
        id: entry

        label: "Torque"
        unit: "N.m"
        width: 336
    }

    Keypad {
        id: pad

        decimal: ","
        width: 336
        y: 150

        onErased: entry.erase()
        onTyped: key => entry.press(key)
    }

    TestCase {
        name: "Keypad"
        when: windowShown

        function init() {
            entry.clear();
        }

        function press(text: string) {
            for (let i = 0; i < pad.children.length; ++i) {
                const key = pad.children[i];
                if (key.text === text) {
                    mouseClick(key);
                    return;
                }
            }
            fail("no key " + text);
        }

        function test_digits_and_comma_as_typed() {
            press("1");
            press("1");
            press(",");
            press("5");
            compare(entry.text, "11,5");
            press(",");
            compare(entry.text, "11,5", "a second mark is refused");
            press("del");
            compare(entry.text, "11,");
        }

        function test_point_from_a_keyboard() {
            entry.forceActiveFocus();
            keyClick("2");
            keyClick(".");
            keyClick("4");
            compare(entry.text, "2.4");
            keyClick(",");
            compare(entry.text, "2.4");
        }

        function test_key_sizes() {
            for (let i = 0; i < pad.children.length; ++i) {
                const key = pad.children[i];
                if (key.text === undefined)
                    continue;
                verify(key.height >= 63, key.text + " is " + key.height + " high");
                verify(key.width >= 103, key.text + " is " + key.width + " wide");
            }
            compare(pad.columnSpacing, 13);
            compare(pad.rowSpacing, 13);
        }
    }
}
