pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// The reference book: bought drinks, their vintages and lots, and how far good ones of their own lie apart.
PageFrame {
    id: root

    required property ReferencesModel model

    objectName: "referencesPage"
    over: qsTr("Reference book")
    headline: !model.loaded ? "" : model.headline
    lead: model.anything ? qsTr("What you bought to hold yours against. How far its vintages lie apart is a range to aim at.") : ""
    primary: qsTr("Put a reference on the shelf")
    primaryShown: model.loaded
    onPrimaryRequested: model.add()
    Component.onCompleted: model.load()

    EmptyState {
        width: parent.width
        visible: root.model.loaded && !root.model.anything
        text: qsTr("Nothing to hold yours against yet. Buy the one you admire, two vintages of it if you can, and keep a bottle back.")
    }
    Column {
        width: parent.width
        visible: root.model.anything
        spacing: 14
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Bought drinks and their lots")

        Repeater {
            model: root.model.book

            Column {
                id: line

                required property int index
                required property bool drink
                required property string name
                required property string stock
                required property string says
                required property string past
                required property bool attention
                required property bool pourable

                width: root.columnWidth
                spacing: 2

                HairLine {
                    width: parent.width
                    visible: line.drink && line.index > 0
                }
                LinkButton {
                    objectName: "referenceOpen" + line.index
                    visible: line.drink
                    text: line.name
                    onClicked: root.model.open(line.index)
                }
                Flow {
                    width: parent.width
                    visible: !line.drink
                    spacing: 16

                    Body {
                        width: Math.min(implicitWidth, root.columnWidth)
                        text: line.name
                        font.weight: Font.Medium
                    }
                    Body {
                        width: Math.min(implicitWidth, root.columnWidth)
                        text: line.stock
                    }
                }
                Body {
                    width: parent.width
                    visible: text !== ""
                    text: line.past
                    color: line.attention ? Theme.attention : Theme.ink
                }
                Small {
                    width: parent.width
                    visible: text !== ""
                    text: line.says
                }
                LinkButton {
                    objectName: "referencePlan" + line.index
                    visible: line.pourable
                    quiet: true
                    text: qsTr("Plan a tasting beside it")
                    Accessible.name: qsTr("Plan a tasting beside %1").arg(line.name)
                    onClicked: root.model.planBeside(line.index)
                }
            }
        }
    }
}
