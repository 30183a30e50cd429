import QtQuick
import QtTest
import Undercowl.Style

Item {
    height: 640
    width: 360

    WirePicker {
        id: picker

        width: 336
    }

    SignalSpy {
        id: spy

        signalName: "picked"
        target: picker
    }

    TestCase {
        name: "Picker"
        when: windowShown

        function init() {
            picker.reset();
            wait(50);
            spy.clear();
        }

        function keyFor(item: Item, word: string): Item {
            for (let i = 0; i < item.children.length; ++i) {
                const child = item.children[i];
                if (child.hatched !== undefined && child.text === word)
                    return child;
                const found = keyFor(child, word);
                if (found)
                    return found;
            }
            return null;
        }

        function test_two_touches_data() {
            return [
                {
                    tag: "green, white tracer",
                    first: "green",
                    second: "white",
                    base: "GN",
                    tracer: "WH"
                },
                {
                    tag: "plain light blue",
                    first: "light blue",
                    second: "no tracer",
                    base: "LBU",
                    tracer: ""
                }
            ];
        }
        function test_two_touches(data) {
            mouseClick(keyFor(picker, data.first));
            compare(spy.count, 0);
            wait(50);
            mouseClick(keyFor(picker, data.second));
            compare(spy.count, 1);
            compare(spy.signalArguments[0][0], data.base);
            compare(spy.signalArguments[0][1], data.tracer);
        }

        function test_every_colour_has_letters_and_a_word() {
            compare(Insulations.codes.length, 14);
            for (const code of Insulations.codes)
                verify(keyFor(picker, Insulations.word(code)) !== null, code);
        }

        function test_no_wire_has_a_tracer_of_its_own_colour() {
            mouseClick(keyFor(picker, "red"));
            wait(50);
            compare(keyFor(picker, "red"), null);
        }
    }
}
