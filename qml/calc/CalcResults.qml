// What a calculation answers: values large enough to be read from a metre away, the verdict in word and shape, cautions.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property CalcView calc

    spacing: Theme.grid * 3

    VerdictMark {
        reason: root.calc.reason
        verdict: root.calc.verdict
        visible: root.calc.verdict !== ""
        width: parent.width
    }

    // Where the curve is what was judged it stands beside the verdict, else below the values.
    CurvePlot {
        curve: root.calc.curve
        visible: count > 1 && root.calc.verdict !== ""
        width: parent.width
    }

    Panel {
        visible: root.calc.results.count > 0
        width: parent.width

        Repeater {
            model: root.calc.results

            Column {
                id: result

                required property string title
                required property string aside

                width: parent?.width ?? 0

                Label {
                    kind: Label.Aside
                    text: result.title
                    width: parent.width
                }

                Label {
                    // Words and lists are read from near by, values from afar.
                    kind: result.aside.length > 16 ? Label.Body : Label.Name
                    text: result.aside
                    width: parent.width
                }
            }
        }
    }

    BandPlot {
        band: root.calc.band
        width: parent.width
    }

    CurvePlot {
        curve: root.calc.curve
        visible: count > 1 && root.calc.verdict === ""
        width: parent.width
    }

    Label {
        text: root.calc.problem
        tone: Theme.quiet
        visible: text !== ""
        width: parent.width
    }

    Repeater {
        model: root.calc.results.count > 0 ? root.calc.cautions : []

        CautionBox {
            required property string modelData

            text: modelData
            width: parent?.width ?? 0
        }
    }
}
