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

    Snackbar {
        id: glove

        lift: true
        y: 100
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

        // What is seen below an item and can be touched.
        function button(under: Item): Item {
            for (let i = 0; i < under.children.length; ++i) {
                const child = under.children[i];
                const found = !child.visible ? null : child.triggered !== undefined ? child : button(child);
                if (found !== null)
                    return found;
            }
            return null;
        }
        function words(under: Item): var {
            let found = [];
            for (let i = 0; i < under.children.length; ++i) {
                const child = under.children[i];
                if (child.visible)
                    found = found.concat(child.contentWidth !== undefined && child.text !== "" ? [child] : words(child));
            }
            return found;
        }

        function test_at_the_lift_the_words_are_there_data() {
            return [
                {
                    tag: "beside a keypad",
                    width: 270,
                    spare: 90
                },
                {
                    tag: "beside the lock",
                    width: 180,
                    spare: 90
                },
                {
                    tag: "beside the lock on a larger phone",
                    width: 232,
                    spare: 90
                },
                {
                    tag: "while something is read aloud",
                    width: 90,
                    spare: 0
                },
                {
                    tag: "in a window",
                    width: 700,
                    spare: 90
                }
            ];
        }
        function test_at_the_lift_the_words_are_there(data) {
            glove.width = data.width;
            glove.spare = data.spare;
            glove.height = Theme.liftOther;
            glove.show("Step 4 kept", "four");
            waitForRendering(glove);
            const undo = button(glove);
            verify(undo.width >= Theme.liftWidth && undo.height >= Theme.liftOther);
            verify(undo.mapToItem(glove, undo.width, 0).x <= data.width - data.spare, "it lies where a tool was");
            const said = words(glove);
            compare(said.map(each => each.text).sort(), ["Step 4 kept", "Undo"]);
            for (const each of said) {
                const at = each.mapToItem(glove, 0, 0);
                verify(each.contentWidth <= each.width + 1 && !each.truncated, each.text);
                verify(at.x >= 0 && at.x + each.contentWidth <= data.width + 1 && at.y >= 0 && at.y + each.contentHeight <= glove.height + 1, each.text);
                verify(each.fontInfo.pixelSize >= 15, each.text);
            }
            glove.nextAction();
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
