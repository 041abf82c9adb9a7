pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// Side by side: batches of one recipe in columns, and what moved between them where they can be compared.
PageFrame {
    id: root

    required property SideBySideModel model

    objectName: "sideBySidePage"
    over: model.anything && model.closedBy === "" ? (model.recipe !== "" ? model.recipe : qsTr("Side by side")) : ""
    shape: model.shape
    headline: !model.loaded ? "" : model.closedBy !== "" ? qsTr("These pages are closed while a look is sealed.") : model.anything ? model.headline : qsTr("Side by side")
    lead: model.loaded && !model.anything ? qsTr("Batches of one recipe in columns: what was changed beside what moved.") : ""
    primary: model.primary
    primaryReason: model.primaryReason
    primaryShown: model.loaded
    onPrimaryRequested: model.goOn()
    links: [
        LinkButton {
            objectName: "sidePick"
            visible: root.model.anything
            text: root.model.picking ? qsTr("Leave the list of batches") : qsTr("Choose batches yourself")
            onClicked: root.model.pick(!root.model.picking)
        }
    ]
    Component.onCompleted: model.load()

    EmptyState {
        width: parent.width
        visible: root.model.loaded && !root.model.anything && !root.model.picking
        text: qsTr("Two batches made by one recipe stand beside each other here. Write the recipe on the page of each batch, or choose batches yourself.")
    }
    Body {
        width: parent.width
        visible: root.model.closedBy !== ""
        text: qsTr("A look of %1 is sealed, and what you read here would sit at the table with you. Open its key first.").arg(root.model.closedBy)
    }
    ToldPart {
        width: parent.width
        visible: root.model.lines.length > 0
        lines: root.model.lines
    }
    Repeater {
        model: root.model.steps

        FigurePart {
            required property int index

            objectName: "step" + index
            width: root.columnWidth
        }
    }
    Column {
        width: parent.width
        visible: root.model.table.count > 0
        spacing: 12

        SectionTitle {
            width: parent.width
            text: qsTr("The batches")
        }
        ColumnsTable {
            width: parent.width
            headers: root.model.headers
            rows: root.model.table
        }
        Small {
            width: parent.width
            visible: text !== ""
            text: root.model.underTable
        }
        Repeater {
            model: root.model.marks

            Small {
                required property string modelData

                width: root.columnWidth
                text: modelData
            }
        }
    }
    ChoiceRow {
        objectName: "sideBase"
        width: parent.width
        visible: root.model.bases.length > 0
        label: qsTr("What each batch is held against")
        options: root.model.bases
        current: root.model.base
        onChosen: index => root.model.holdAgainst(index)
    }
    Column {
        width: parent.width
        visible: root.model.picking

        SectionTitle {
            width: parent.width
            text: qsTr("Batches to set side by side")
        }
        Repeater {
            model: root.model.batches

            CheckLine {
                required property int index
                required property string name
                required property string line
                required ticked

                objectName: "sideBatch" + index
                width: root.columnWidth
                text: name
                more: line
                onTickRequested: root.model.tick(index)
            }
        }
    }
    Column {
        width: parent.width
        visible: root.model.recipes.count > 1

        SectionTitle {
            width: parent.width
            text: qsTr("Recipes")
        }
        Repeater {
            model: root.model.recipes

            RowLink {
                required property int index
                required property string name
                required line

                objectName: "recipe" + index
                width: root.columnWidth
                text: name
                onClicked: root.model.chooseRecipe(index)
            }
        }
    }
    HowPart {
        objectName: "sideHow"
        width: parent.width
        lines: root.model.how
    }
}
