pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// Shelf: own batches and bought ones.
PageFrame {
    id: root

    required property ShelfModel model

    objectName: "shelfPage"
    headline: qsTr("Shelf")
    lead: qsTr("What you made, and what you bought to set beside it.")
    primary: qsTr("Put on the shelf")
    onPrimaryRequested: model.add()
    links: [
        LinkButton {
            objectName: "shelfArchived"
            text: root.model.archivedShown ? qsTr("Hide what was put away") : qsTr("Show what was put away too")
            onClicked: root.model.archivedShown = !root.model.archivedShown
        }
    ]
    Component.onCompleted: model.load()

    Field {
        objectName: "shelfFind"
        width: Math.min(parent.width, 420)
        visible: root.model.anything
        label: qsTr("Find by name")
        text: root.model.wanted
        onTyped: text => root.model.wanted = text
    }
    EmptyState {
        width: parent.width
        visible: root.model.loaded && root.model.beverages.count === 0
        text: root.model.anything ? qsTr("Nothing on the shelf has that name.") : qsTr("Nothing here yet. Start with the drink you are proudest of.")
    }
    after: [
        Column {
            width: parent.width

            Repeater {
                model: root.model.beverages

                RowLink {
                    required property int index
                    required property string name
                    required property bool archived
                    required line

                    objectName: "beverage" + index
                    width: root.columnWidth
                    text: archived ? qsTr("%1 (put away)").arg(name) : name
                    faded: archived
                    onClicked: root.model.open(index)
                }
            }
        }
    ]
}
