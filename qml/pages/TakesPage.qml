pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// What it takes: what this panel can find and would miss, and what must be poured for it.
PageFrame {
    id: root

    required property DraftModel model

    objectName: "takesPage"
    over: model.panelLine
    headline: model.takesHeadline
    lead: model.takesLead
    primary: qsTr("On to care")
    primaryReason: model.notYet
    onPrimaryRequested: model.toCare()
    Component.onCompleted: model.load()

    Flow {
        width: parent.width
        spacing: 28

        NumberField {
            objectName: "rounds"
            width: Math.min(root.columnWidth, 210 * Theme.scale)
            label: qsTr("Rounds")
            text: root.model.rounds
            error: root.model.wrongField === "rounds" ? root.model.wrong : ""
            onTyped: text => root.model.typeRounds(text)
            onStepRequested: by => root.model.stepRounds(by)
        }
        NumberField {
            objectName: "cupMl"
            width: Math.min(root.columnWidth, 240 * Theme.scale)
            label: qsTr("Per cup")
            unit: qsTr("mL")
            text: root.model.cupMl
            error: root.model.wrongField === "cup_ml" ? root.model.wrong : ""
            onTyped: text => root.model.typeCupMl(text)
            onStepRequested: by => root.model.stepCupMl(by)
        }
        NumberField {
            objectName: "spares"
            width: Math.min(root.columnWidth, 240 * Theme.scale)
            label: qsTr("Who might still come")
            text: root.model.spares
            error: root.model.wrongField === "spares" ? root.model.wrong : ""
            onTyped: text => root.model.typeSpares(text)
            onStepRequested: by => root.model.stepSpares(by)
        }
    }
    Figure {
        objectName: "outlook"
        width: parent.width
        source: root.model.figure
    }
    Column {
        width: parent.width
        visible: root.model.small.length > 0
        spacing: 8

        Repeater {
            model: root.model.small

            Body {
                required property string modelData

                width: root.columnWidth
                text: modelData
                color: Theme.attention
            }
        }
    }
    Column {
        width: parent.width
        visible: root.model.ways.count > 0
        spacing: 4

        SectionTitle {
            width: parent.width
            text: qsTr("Ways to see more, cheapest first")
        }
        Repeater {
            model: root.model.ways

            Column {
                id: way

                required property int index
                required property string says
                required property bool taken

                width: root.columnWidth
                spacing: 0

                Body {
                    width: parent.width
                    visible: !way.taken
                    topPadding: 6
                    text: way.says
                }
                LinkButton {
                    objectName: "way" + way.index
                    width: Math.min(implicitWidth, parent.width)
                    visible: way.taken
                    text: way.says
                    onClicked: root.model.takeWay(way.index)
                }
            }
        }
    }
    Column {
        width: parent.width
        visible: root.model.amounts.length > 0
        spacing: 2

        SectionTitle {
            width: parent.width
            text: qsTr("At most, whatever is drawn")
            bottomPadding: 4
        }
        Repeater {
            model: root.model.amounts

            Small {
                required property string modelData

                width: root.columnWidth
                text: modelData
            }
        }
    }
}
