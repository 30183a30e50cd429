// What matters just now, round the edge of the window, to be seen from the corner of the eye. Each state has a colour, a shape
// and a place of its own: none is taken for another, and two can be there at once. The words for it stand elsewhere.
//
//   sound    at both sides: "recording" unbroken, "listening" in dashes, "waiting" for the wake phrase in dots; else empty
//   told     above and below: "saved" unbroken, "refused" in three pieces; else empty
//   locked   a bracket in each corner
// Qt 6.4 cannot bind a delegate to the ids around it, and knows no members of a list:
// qmllint disable unqualified type
import QtQuick

Item {
    id: root

    property string sound: ""
    property string told: ""
    property bool locked: false

    readonly property list<rect> sides: {
        const piece = sound === "recording" ? height : sound === "listening" ? Theme.touch : Theme.edge;
        const step = sound === "recording" ? height : piece + Theme.touch / 2;
        const all = [];
        for (let at = 0; sound !== "" && at < height; at += step)
            all.push(Qt.rect(0, at, Theme.edge, piece), Qt.rect(width - Theme.edge, at, Theme.edge, piece));
        return all;
    }
    readonly property list<rect> ends: {
        const parts = told === "refused" ? 3 : told === "saved" ? 1 : 0;
        const step = parts === 3 ? width * 3 / 8 : width;
        const all = [];
        for (let part = 0; part < parts; ++part)
            all.push(Qt.rect(part * step, 0, parts === 3 ? width / 4 : width, Theme.edge),
                     Qt.rect(part * step, height - Theme.edge, parts === 3 ? width / 4 : width, Theme.edge));
        return all;
    }
    readonly property list<rect> corners: {
        const all = [];
        for (let corner = 0; locked && corner < 4; ++corner) {
            const right = corner % 2 === 1;
            const below = corner > 1;
            all.push(Qt.rect(right ? width - Theme.touch : 0, below ? height - Theme.edge : 0, Theme.touch, Theme.edge),
                     Qt.rect(right ? width - Theme.edge : 0, below ? height - Theme.touch : 0, Theme.edge, Theme.touch));
        }
        return all;
    }

    Accessible.ignored: true

    Repeater {
        model: root.sides

        Rectangle {
            required property rect modelData

            color: root.sound === "waiting" ? Theme.caution : Theme.stop
            height: modelData.height
            width: modelData.width
            x: modelData.x
            y: modelData.y
        }
    }

    Repeater {
        model: root.ends

        Rectangle {
            required property rect modelData

            color: root.told === "saved" ? Theme.act : Theme.caution
            height: modelData.height
            width: modelData.width
            x: modelData.x
            y: modelData.y
        }
    }

    Repeater {
        model: root.corners

        Rectangle {
            required property rect modelData

            color: Theme.ink
            height: modelData.height
            width: modelData.width
            x: modelData.x
            y: modelData.y
        }
    }
}
