pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// Begin a series: which batch, beside what, at which ages; what that takes and what it could show.
PageFrame {
    id: root

    required property BeginSeriesModel model
    readonly property bool possible: model.loaded && model.batches.length > 0

    objectName: "beginSeriesPage"
    over: qsTr("Over time")
    headline: !model.loaded ? "" : possible ? model.headline : qsTr("A series needs a batch of your own.")
    lead: possible ? "" : qsTr("Put it on the shelf with its bottles first.")
    primary: qsTr("Begin the series")
    primaryShown: possible
    onPrimaryRequested: model.begin()
    Component.onCompleted: model.load()

    Column {
        width: parent.width
        visible: root.possible
        spacing: 10

        Repeater {
            model: root.model.lines

            Body {
                required property string modelData

                width: root.columnWidth
                text: modelData
            }
        }
        Body {
            width: parent.width
            visible: text !== ""
            text: root.model.cheaper
        }
        LinkButton {
            objectName: "takeCheaper"
            visible: root.model.mayTakeCheaper
            text: qsTr("Take this plan")
            onClicked: root.model.takeCheaper()
        }
    }
    ChoiceRow {
        objectName: "batch"
        width: parent.width
        visible: root.possible
        label: qsTr("Which batch")
        options: root.model.batches
        current: root.model.batch
        error: root.model.wrongField === "batch" ? root.model.wrong : ""
        onChosen: index => root.model.chooseBatch(index)
    }
    ChoiceRow {
        objectName: "control"
        width: parent.width
        visible: root.possible
        label: qsTr("Beside it in every look")
        options: root.model.controls
        current: root.model.control
        error: root.model.wrongField === "control" ? root.model.wrong : ""
        onChosen: index => root.model.chooseControl(index)
    }
    ChoiceRow {
        objectName: "controlLot"
        width: parent.width
        visible: root.possible && root.model.controlLots.length > 0
        label: qsTr("Which bottles")
        options: root.model.controlLots
        current: root.model.controlLot
        error: root.model.wrongField === "bottles" ? root.model.wrong : ""
        onChosen: index => root.model.chooseControlLot(index)
    }
    Field {
        objectName: "begunOn"
        width: Math.min(parent.width, 320)
        visible: root.possible
        label: qsTr("Ages count from this day (bottling), as in 2026-03-14")
        text: root.model.begunOn
        error: root.model.wrongField === "begun_on" || root.model.wrongField === "due_on" ? root.model.wrong : ""
        onTyped: text => root.model.begunOn = text
    }
    Column {
        width: parent.width
        visible: root.possible
        spacing: 4

        SectionTitle {
            width: parent.width
            text: qsTr("Looks at")
        }
        Small {
            width: parent.width
            visible: text !== ""
            text: root.model.wrongField === "sittings" || root.model.wrongField === "main" || root.model.wrongField === "ages" ? root.model.wrong : ""
            color: Theme.attention
        }
        Repeater {
            model: root.model.ages

            CheckLine {
                required property int index
                required property string says
                required property string on
                required property bool taken

                objectName: "age" + index
                width: root.columnWidth
                text: says
                more: on
                ticked: taken
                onTickRequested: ticked => root.model.takeAge(index, ticked)
            }
        }
    }
    Flow {
        width: parent.width
        visible: root.possible
        spacing: 32

        NumberField {
            objectName: "bottlesEach"
            width: 240
            label: qsTr("Bottles of each for one look")
            text: root.model.each
            error: root.model.wrongField === "bottles_each" ? root.model.wrong : ""
            onTyped: text => root.model.setEach(text)
            onStepRequested: by => root.model.stepEach(by)
        }
        NumberField {
            objectName: "reserve"
            width: 240
            label: qsTr("In reserve")
            text: root.model.reserve
            error: root.model.wrongField === "reserve" ? root.model.wrong : ""
            onTyped: text => root.model.setReserve(text)
            onStepRequested: by => root.model.stepReserve(by)
        }
    }
    Column {
        width: parent.width
        visible: root.possible
        spacing: 16

        SectionTitle {
            width: parent.width
            text: qsTr("What it is for")
        }
        Small {
            width: parent.width
            text: qsTr("One comparison is named now: the last look against the first. It stays as it is once a look is sealed; all else is looking round.")
        }
        Field {
            objectName: "mainWord"
            width: Math.min(parent.width, 420)
            label: qsTr("In what: a word of the sheet, such as cardboard. Left empty: the liking")
            text: root.model.word
            error: root.model.wrongField === "main_word" ? root.model.wrong : ""
            onTyped: text => root.model.word = text
        }
        Field {
            objectName: "mainLimit"
            width: Math.min(parent.width, 420)
            label: qsTr("A change too small to matter, in points (10 of 100 on a line, 1 of 9 in liking); may be left empty")
            text: root.model.limit
            error: root.model.wrongField === "main_limit" ? root.model.wrong : ""
            onTyped: text => root.model.setLimit(text)
        }
        Field {
            objectName: "seriesTitle"
            width: Math.min(parent.width, 520)
            label: qsTr("What you call it")
            text: root.model.title
            error: root.model.wrongField === "title" ? root.model.wrong : ""
            onTyped: text => root.model.title = text
        }
    }
}
