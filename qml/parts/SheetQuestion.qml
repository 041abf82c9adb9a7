pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// One question of a score sheet, in whatever form it is answered.
Column {
    id: root

    required property int index
    required property string form
    required property string label
    required property var options
    required property var marks
    required property int current
    required property int low
    required property int high
    required property string readOut
    required property string lowEnd
    required property string highEnd
    required property string text
    required property string pass
    required property bool passed
    required property SheetModel model

    spacing: 10

    ChoiceRow {
        objectName: "choice" + root.index
        width: root.width
        visible: root.form === "choice"
        label: root.label
        options: root.form === "choice" ? root.options : []
        current: root.passed ? -1 : root.current
        onChosen: option => root.model.answer(root.index, option)
    }
    ScaleLine {
        objectName: "line" + root.index
        width: root.width
        visible: root.form === "line"
        label: root.label
        value: root.current
        low: root.low
        high: root.high
        lowEnd: root.lowEnd
        highEnd: root.highEnd
        readOut: root.readOut
        words: root.form === "line" ? root.options : []
        wordMarks: root.form === "line" ? root.marks : []
        onPlaced: value => root.model.answer(root.index, value)
        onStepRequested: by => root.model.step(root.index, by)
    }
    Body {
        width: root.width
        visible: root.form === "ticks" || root.form === "rank" || root.form === "points"
        text: root.form === "points" ? qsTr("%1 %2.").arg(root.label).arg(root.readOut) : root.label
    }
    Flow {
        width: root.width
        visible: root.form === "ticks" || root.form === "rank"
        spacing: 12

        Repeater {
            model: root.form === "ticks" || root.form === "rank" ? root.options : []

            OptionPill {
                required property string modelData
                required property int index
                readonly property int mark: root.marks[index] ?? -1

                objectName: "touch" + root.index + "_" + index
                text: root.form === "rank" && mark > 0 ? qsTr("%1, place %2").arg(modelData).arg(root.options.length + 1 - mark) : modelData
                more: root.label
                chosen: mark > 0
                onClicked: root.model.touch(root.index, index, 1)
            }
        }
    }
    Repeater {
        model: root.form === "points" ? root.options : []

        Row {
            id: line

            required property string modelData
            required property int index

            spacing: 16

            Body {
                width: 120
                height: Theme.target
                text: line.modelData
                font.pixelSize: Theme.title
                font.underline: true
                verticalAlignment: Text.AlignVCenter
            }
            StepButton {
                objectName: "pointLess" + root.index + "_" + line.index
                text: "\u2212"
                spoken: qsTr("One point less for %1").arg(line.modelData)
                onClicked: root.model.touch(root.index, line.index, -1)
            }
            Body {
                width: 40
                height: Theme.target
                text: root.marks[line.index] ?? 0
                horizontalAlignment: Text.AlignHCenter
                verticalAlignment: Text.AlignVCenter
            }
            StepButton {
                objectName: "pointMore" + root.index + "_" + line.index
                text: "+"
                spoken: qsTr("One point more for %1").arg(line.modelData)
                onClicked: root.model.touch(root.index, line.index, 1)
            }
        }
    }
    Field {
        objectName: "words" + root.index
        width: Math.min(root.width, 720)
        visible: root.form === "words" || root.form === "worst"
        label: root.label
        text: root.text
        onTyped: text => root.model.write(root.index, text)
    }
    OptionPill {
        objectName: "pass" + root.index
        visible: root.pass !== ""
        text: root.pass
        more: root.label
        chosen: root.passed
        onClicked: root.model.passOver(root.index)
    }
}
