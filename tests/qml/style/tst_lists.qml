// Targets are large enough and no words are cut, at 100 and at 200 %.
import QtQuick
import QtTest
import Undercowl.Style

Item {
    height: 1600
    width: 336

    Column {
        id: column

        width: parent.width

        ListRow {
            aside: "front brake hose cracked at the banjo"
            remark: "12"
            severity: "unsafe"
            title: "Brake hose, front, and its banjo bolt"
            width: parent.width
        }
        ActionButton {
            kind: ActionButton.Refuse
            text: "Does not match"
            width: parent.width
        }
        CautionBox {
            text: "The battery's negative lead is off"
            width: parent.width
        }
        VerdictMark {
            reason: "99.9 % limit: shop record"
            verdict: "undecided"
            width: parent.width
        }
        PageHeader {
            aside: "3 / 6"
            title: "Rear loom, six places"
            width: parent.width
        }
        WireKey {
            base: "LGN"
            text: "light green"
            width: 206
        }
    }

    TestCase {
        name: "Lists"
        when: windowShown

        function check(item: Item) {
            for (let i = 0; i < item.children.length; ++i) {
                const child = item.children[i];
                if (!child.visible)
                    continue;
                if (child.triggered !== undefined)
                    verify(child.width >= 48 && child.height >= 48, child + ": " + child.width + " x " + child.height);
                if (child.paintedHeight !== undefined && child.text !== undefined && child.text !== "") {
                    verify(child.paintedWidth <= child.width + 1, "too narrow: " + child.text);
                    verify(!child.truncated, "cut: " + child.text);
                    const top = child.mapToItem(column, 0, 0).y;
                    let row = child;
                    while (row.parent !== column)
                        row = row.parent;
                    verify(top >= row.y - 1, "sticks out above: " + child.text);
                    verify(top + child.paintedHeight <= row.y + row.height + 1, "sticks out below: " + child.text);
                }
                check(child);
            }
        }

        function test_sizes_data() {
            return [
                {
                    tag: "100 %",
                    scale: 1
                },
                {
                    tag: "200 %",
                    scale: 2
                }
            ];
        }
        function test_sizes(data) {
            Theme.textScale = data.scale;
            wait(50);
            check(column);
            Theme.textScale = 1;
        }
    }
}
