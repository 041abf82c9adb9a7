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
    ToldPart {
        objectName: "labelPart"
        width: parent.width
        visible: root.model.known && root.model.loaded
        heading: root.model.labelHeading
        lines: root.model.labelLines
        rows: root.model.label
    }
    HairLine {
        width: parent.width
        visible: root.model.known && root.model.loaded
    }
    ToldPart {
        width: parent.width
        visible: root.model.known && root.model.loaded
        heading: root.model.expectedHeading
        lines: root.model.expectedLines
    }
    Figure {
        objectName: "curve"
        width: parent.width
        source: root.model.curve
    }
    ToldPart {
        width: parent.width
        visible: root.model.expected.count > 0
        spoken: root.model.expectedHeading
        rows: root.model.expected
    }
    HowPart {
        objectName: "roomHow"
        width: parent.width
        lines: root.model.how
    }
}
