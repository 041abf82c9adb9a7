pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// Paper: what is printed, on which paper, into which file. The key is handed over to the pourer first.
PageFrame {
    id: root

    required property PaperModel model

    objectName: "paperPage"
    headline: qsTr("What goes on paper?")
    lead: model.kindLine
    primary: model.asking ? "" : model.ofKey ? qsTr("Hand over to the pourer") : qsTr("Make the PDF")
    onPrimaryRequested: model.print()
    links: [
        LinkButton { objectName: "paperLeave"; text: qsTr("Back to the places"); onClicked: root.model.leave() }
    ]
    Component.onCompleted: model.load()

    Panel {
        width: parent.width
        visible: root.model.asking
        alarming: true

        Body {
            width: parent.width
            text: qsTr("This is for the pourer alone. Everybody who tastes leaves the room, the makers first. Whoever pours made none of it and does not taste. The opening is recorded.")
            Accessible.role: Accessible.AlertMessage
        }
        Flow {
            width: parent.width
            spacing: 24

            LinkButton { objectName: "paperNo"; text: qsTr("No, leave it shut"); onClicked: root.model.asking = false }
            LinkButton { objectName: "paperYes"; text: qsTr("I pour: make the PDF"); danger: true; onClicked: root.model.printForPourer() }
        }
    }
    Body {
        objectName: "paperTold"
        width: parent.width
        visible: text !== ""
        text: root.model.told
        Accessible.role: Accessible.AlertMessage
    }
    LinkButton {
        objectName: "paperOpen"
        visible: root.model.told !== ""
        text: qsTr("Open it in your viewer")
        onClicked: Qt.openUrlExternally(root.model.written)
    }
    ChoiceRow {
        objectName: "paperKind"
        width: parent.width
        options: root.model.kinds
        current: root.model.kind
        onChosen: index => root.model.kind = index
    }
    ChoiceRow {
        objectName: "paperSize"
        width: parent.width
        label: qsTr("Paper")
        options: [qsTr("A4"), qsTr("Letter")]
        current: root.model.size
        onChosen: index => root.model.size = index
    }
    Flow {
        width: parent.width
        visible: root.model.ofLabels
        spacing: 28

        NumberField {
            objectName: "labelColumns"
            width: 260 * Theme.scale
            label: qsTr("Labels side by side")
            text: root.model.columns
            error: root.model.wrongField === "columns" ? root.model.wrong : ""
            onTyped: text => root.model.columns = text
            onStepRequested: by => root.model.step("columns", by)
        }
        NumberField {
            objectName: "labelRows"
            width: 260 * Theme.scale
            label: qsTr("Labels one below the other")
            text: root.model.rows
            error: root.model.wrongField === "rows" ? root.model.wrong : ""
            onTyped: text => root.model.rows = text
            onStepRequested: by => root.model.step("rows", by)
        }
        NumberField {
            objectName: "labelSkip"
            width: 260 * Theme.scale
            label: qsTr("Labels already gone from the first sheet")
            text: root.model.skip
            error: root.model.wrongField === "skip" ? root.model.wrong : ""
            onTyped: text => root.model.skip = text
            onStepRequested: by => root.model.step("skip", by)
        }
        Field {
            objectName: "labelMargins"
            width: Math.min(root.columnWidth, 400 * Theme.scale)
            label: qsTr("Margins in mm: top, right, bottom, left")
            text: root.model.margins
            error: root.model.wrongField === "margins" ? root.model.wrong : ""
            onTyped: text => root.model.margins = text
        }
        Field {
            objectName: "labelGaps"
            width: Math.min(root.columnWidth, 400 * Theme.scale)
            label: qsTr("Gaps in mm: side by side, one below the other")
            text: root.model.gaps
            error: root.model.wrongField === "gaps" ? root.model.wrong : ""
            onTyped: text => root.model.gaps = text
        }
    }
    Field {
        objectName: "paperFile"
        width: parent.width
        label: qsTr("Into this file (.pdf)")
        text: root.model.file
        error: root.model.wrongField === "out" ? root.model.wrong : ""
        onTyped: text => root.model.file = text
        onAccepted: root.model.print()
    }
}
