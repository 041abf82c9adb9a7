pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// You and the room: how far the brewer leans to their own beside the others, then what they expected and what came.
PageFrame {
    id: root

    required property RoomModel model

    objectName: "roomPage"
    over: model.known ? qsTr("You and the room") : ""
    shape: model.shape
    headline: model.headline
    lead: model.lead
    primary: model.known ? qsTr("Write what you expect next") : qsTr("Say who you are")
    primaryShown: model.loaded
    onPrimaryRequested: model.known ? model.expectNext() : model.toPeople()
    Component.onCompleted: model.load()

    EmptyState {
        width: parent.width
        visible: root.model.loaded && !root.model.known
        text: root.model.nobody
    }
    Figure {
        objectName: "lean"
        width: parent.width
        source: root.model.figure
    }
    Column {
        width: parent.width
        visible: root.model.lines.length > 0
        spacing: 10

        Repeater {
            model: root.model.lines

            Body {
                required property string modelData

                width: root.columnWidth
                text: modelData
            }
        }
    }
    HairLine {
        width: parent.width
        visible: root.model.known && root.model.loaded
    }
    Column {
        width: parent.width
        visible: root.model.known && root.model.loaded
        spacing: 10

        SectionTitle {
            width: parent.width
            text: root.model.expectedHeading
        }
        Repeater {
            model: root.model.expectedLines

            Body {
                required property string modelData

                width: root.columnWidth
                text: modelData
            }
        }
    }
    Figure {
        objectName: "curve"
        width: parent.width
        source: root.model.curve
    }
    Column {
        width: parent.width
        visible: root.model.expected.count > 0
        spacing: 14
        Accessible.role: Accessible.List
        Accessible.name: root.model.expectedHeading

        Repeater {
            model: root.model.expected

            Column {
                id: line

                required property string when
                required property string wrote
                required property string came

                width: root.columnWidth
                spacing: 2
                Accessible.role: Accessible.ListItem
                Accessible.name: qsTr("%1: %2; %3").arg(line.when).arg(line.wrote).arg(line.came)

                Small { width: parent.width; text: line.when; Accessible.ignored: true }
                Body { width: parent.width; text: qsTr("%1: %2.").arg(line.wrote).arg(line.came); Accessible.ignored: true }
            }
        }
    }
}
