// What lies behind the verdict: the plot, what would settle it, earlier readings as a curve.
// Qt 6.4 knows no string list as a list of strings, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property MeasureView measure

    spacing: Theme.grid * 3

    BandPlot {
        band: root.measure.band
        width: parent.width
    }

    Repeater {
        model: root.measure.cautions

        CautionBox {
            required property string modelData

            text: modelData
            width: parent?.width ?? 0
        }
    }

    CurvePlot {
        curve: root.measure.course
        width: parent.width
    }
}
