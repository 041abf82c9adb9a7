pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// What came out: the verdict, its evidence, what it does not say; for the room without any person, for the maker with more.
PageFrame {
    id: root

    required property CameOutModel model

    objectName: "cameOutPage"
    over: model.over
    shape: model.shape
    headline: model.headline
    lead: model.second
    primary: model.deciding ? qsTr("Keep what I wrote") : qsTr("Write what you will do")
    primaryShown: model.loaded && !model.closed
    onPrimaryRequested: model.deciding ? model.decide() : model.deciding = true
    links: [
        LinkButton {
            objectName: "cameOutView"
            visible: !root.model.closed
            text: root.model.forMaker ? qsTr("The page for the room") : qsTr("The page for the maker")
            onClicked: root.model.forMaker = !root.model.forMaker
        },
        LinkButton { objectName: "cameOutOpenRound"; visible: root.model.mayOpenRound; text: qsTr("Score again, with the labels known"); onClicked: root.model.toOpenRound() },
        LinkButton { objectName: "cameOutHistory"; visible: !root.model.closed; text: qsTr("History"); onClicked: root.model.toHistory() }
    ]
    Component.onCompleted: model.load()

    Panel {
        width: parent.width
        visible: root.model.closed

        Body {
            width: parent.width
            text: qsTr("What you read here would sit at the table with you. Open the key of that look first. You may open this page all the same: that is written down beside the look, for good.")
        }
        LinkButton {
            objectName: "cameOutAnyway"
            text: qsTr("Open it all the same")
            onClicked: root.model.openAnyway()
        }
    }
    Panel {
        width: parent.width
        visible: root.model.alarm !== ""
        alarming: root.model.broken

        Body {
            width: parent.width
            text: root.model.alarm
            Accessible.role: Accessible.AlertMessage
        }
    }
    Small {
        width: parent.width
        visible: root.model.word !== ""
        text: qsTr("The verdict: %1.").arg(root.model.word)
    }
    Body {
        objectName: "count"
        width: parent.width
        text: root.model.count
        font.pixelSize: Theme.body * 1.125
    }
    Figure {
        objectName: "interval"
        width: parent.width
        source: root.model.figure
    }
    Column {
        width: parent.width
        spacing: 10

        Repeater {
            model: root.model.evidence

            Body {
                required property string modelData

                width: root.columnWidth
                text: modelData
            }
        }
    }
    Repeater {
        model: root.model.pairs

        PairPart {
            required property int index

            objectName: "pair" + index
            width: root.columnWidth
        }
    }
    LinkButton {
        objectName: "cameOutMap"
        visible: root.model.mayShowMap
        text: root.model.mapShown ? qsTr("Hide how the cups lie to each other") : root.model.mapLink
        onClicked: root.model.showMap()
    }
    Column {
        width: parent.width
        visible: root.model.mapShown
        spacing: 12

        Repeater {
            model: root.model.mapLines

            Body {
                required property string modelData

                width: root.columnWidth
                text: modelData
            }
        }
        Figure {
            objectName: "map"
            width: parent.width
            source: root.model.map
        }
    }
    HairLine {
        width: parent.width
        visible: root.model.facts.count > 0
    }
    Flow {
        width: parent.width
        spacing: 24

        Repeater {
            model: root.model.facts

            SideLine {
                required label
                required says

                width: Math.max(200, (root.columnWidth - 48) / 3)
            }
        }
    }
    Column {
        width: parent.width
        visible: root.model.forMaker
        spacing: 10

        HairLine {
            width: parent.width
        }
        SectionTitle {
            width: parent.width
            text: qsTr("For the maker alone")
        }
        Repeater {
            model: root.model.makerLines

            Body {
                required property string modelData

                width: root.columnWidth
                text: modelData
            }
        }
        Repeater {
            model: root.model.people

            Row {
                id: person

                required property string label
                required property string says

                width: root.columnWidth
                spacing: 16

                Body { width: Math.min(200, parent.width / 3); text: person.label; font.weight: Font.Medium }
                Body { width: parent.width - Math.min(200, parent.width / 3) - 16; text: person.says }
            }
        }
    }
    Column {
        width: parent.width
        visible: root.model.record.length > 0
        spacing: 4

        HairLine {
            width: parent.width
        }
        Repeater {
            model: root.model.record

            Small {
                required property string modelData

                width: root.columnWidth
                text: modelData
            }
        }
    }
    Panel {
        width: parent.width
        visible: root.model.deciding

        Body {
            width: parent.width
            visible: text !== ""
            text: root.model.promised
        }
        Field {
            objectName: "decision"
            width: parent.width
            label: qsTr("What will you do with this? One line; it comes back when you plan the next tasting of this batch.")
            text: root.model.decision
            error: root.model.wrongField === "text" ? root.model.wrong : ""
            onTyped: text => root.model.decision = text
            onAccepted: root.model.decide()
        }
    }
    Body {
        width: parent.width
        visible: text !== "" && !root.model.deciding
        text: root.model.decided
    }
    Flow {
        width: parent.width
        visible: !root.model.closed
        spacing: 24

        Field {
            objectName: "reportFile"
            width: Math.min(parent.width, 520)
            label: qsTr("Write the report to this file (.pdf, .html or .json)")
            text: root.model.reportFile
            error: root.model.wrongField === "out" ? root.model.wrong : ""
            onTyped: text => root.model.reportFile = text
            onAccepted: root.model.writeReport()
        }
        LinkButton {
            objectName: "reportWrite"
            topPadding: 24
            text: qsTr("Write the report")
            onClicked: root.model.writeReport()
        }
    }
    Small {
        width: parent.width
        visible: text !== ""
        text: root.model.told
    }
}
