pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// What it takes: what this panel can find and would miss, and what must be poured for it.
PageFrame {
    id: root

    required property DraftModel model
    property bool allWays: false

    objectName: "takesPage"
    over: model.panelLine
    headline: model.takesHeadline
    lead: model.takesLead
    primary: qsTr("On to the give-aways")
    primaryReason: model.notYet
    onPrimaryRequested: model.toGiveAways()
    Component.onCompleted: model.load()

    Column {
        width: parent.width
        visible: root.model.methods.count > 0
        spacing: 4

        SectionTitle {
            width: parent.width
            text: qsTr("How it is asked")
        }
        Small {
            objectName: "methodNote"
            width: parent.width
            visible: text !== ""
            text: root.model.methodNote
        }
        LinkButton {
            objectName: "letProgramPick"
            visible: root.model.methodChosen && root.model.methods.count > 1
            text: qsTr("Let the program pick again")
            quiet: true
            onClicked: root.model.letProgramPick()
        }
        Repeater {
            model: root.model.methods

            CheckLine {
                required property int index
                required property string says
                required property string why
                required property bool taken

                objectName: "method" + index
                width: root.columnWidth
                visible: index < 3 || taken || root.allWays
                text: says
                more: why
                ticked: taken
                oneOfSeveral: true
                onTickRequested: root.model.chooseMethod(index)
            }
        }
    }
    LinkButton {
        objectName: "moreWays"
        visible: root.model.methods.count > 3 && !root.allWays
        text: qsTr("More ways to ask")
        quiet: true
        onClicked: root.allWays = true
    }
    CheckLine {
        objectName: "lingers"
        width: root.columnWidth
        visible: !root.model.sheet.isSheet
        text: qsTr("The taste lingers: it is still there in the next cup")
        more: qsTr("Smoke, heat, a lot of bitterness, acid or oak. It speaks for fewer cups.")
        ticked: root.model.lingers
        onTickRequested: root.model.tickLingers()
    }
    ChoiceRow {
        objectName: "marked"
        width: parent.width
        visible: root.model.hasMarked
        label: qsTr("Which drink stands in the marked cup?")
        options: root.model.markedChoices
        current: root.model.marked
        onChosen: index => root.model.chooseMarked(index)
    }
    CheckLine {
        objectName: "alsoPrefer"
        width: root.columnWidth
        visible: root.model.mayAlsoPrefer
        text: qsTr("Ask afterwards which one was liked better")
        more: qsTr("Counted among those who found the right answer, as a hint.")
        ticked: root.model.alsoPrefer
        onTickRequested: root.model.tickAlsoPrefer()
    }
    CheckLine {
        objectName: "stopsEarly"
        width: root.columnWidth
        visible: root.model.mayStopEarly
        text: qsTr("Look after each whole round and stop when it is clear enough")
        more: qsTr("It says go on or stop, nothing else. It may take fewer cups, by a rule of its own that is sealed with the plan.")
        ticked: root.model.stopsEarly
        onTickRequested: root.model.tickStopsEarly()
    }
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
            unit: root.model.volumeUnit
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
        NumberField {
            objectName: "evenings"
            width: Math.min(root.columnWidth, 210 * Theme.scale)
            label: qsTr("Evenings")
            text: root.model.evenings
            error: root.model.wrongField === "evenings" ? root.model.wrong : ""
            onTyped: text => root.model.typeEvenings(text)
            onStepRequested: by => root.model.stepEvenings(by)
        }
        NumberField {
            objectName: "wave"
            width: Math.min(root.columnWidth, 240 * Theme.scale)
            label: qsTr("Places at a time (0: all)")
            text: root.model.wave
            error: root.model.wrongField === "wave" ? root.model.wrong : ""
            onTyped: text => root.model.typeWave(text)
            onStepRequested: by => root.model.stepWave(by)
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
    ServingPart {
        width: parent.width
        serving: root.model.serving
        model: root.model
    }
    HowPart {
        objectName: "takesHow"
        width: parent.width
        lines: root.model.how
    }
}
