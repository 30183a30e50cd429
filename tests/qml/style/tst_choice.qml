import QtQuick
import QtTest
import Undercowl.Style

Item {
    id: root

    property int count: 1

    height: 640
    width: 360

    Choice {
        id: bound

        current: root.count - 1
        options: ["one", "two", "three"]
        width: 336

        onChosen: index => root.count = index + 1
    }

    Choice {
        id: free

        options: ["screw", "nut"]
        width: 336
        y: 200
    }

    TestCase {
        name: "Choice"
        when: windowShown

        function chip(item: Item, word: string): Item {
            for (let i = 0; i < item.children.length; ++i) {
                const child = item.children[i];
                if (child.chosen !== undefined && child.text === word)
                    return child;
                const found = chip(child, word);
                if (found)
                    return found;
            }
            return null;
        }

        // What a touch chose is what the binding says from then on, too: a tick that stays where another value holds
        // is a wrong answer.
        function test_a_touch_leaves_the_binding() {
            mouseClick(chip(bound, "three"));
            compare(root.count, 3);
            verify(chip(bound, "three").chosen);
            root.count = 1;
            verify(chip(bound, "one").chosen);
            verify(!chip(bound, "three").chosen);
            wait(50);
            mouseClick(chip(bound, "two"));
            compare(root.count, 2);
            verify(chip(bound, "two").chosen);
        }

        function test_a_touch_is_forgotten() {
            mouseClick(chip(free, "nut"));
            verify(chip(free, "nut").chosen);
            compare(free.current, -1);
            free.clear();
            verify(!chip(free, "nut").chosen);
        }
    }
}
