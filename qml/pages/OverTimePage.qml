pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// Over time: what the sittings of an aging batch have shown, and the next one.
PageFrame {
    id: root

    required property OverTimeModel model

    objectName: "overTimePage"
    over: model.anything ? model.title : ""
    shape: model.shape
    headline: !model.loaded ? "" : !model.anything ? qsTr("Over time") : model.closed ? qsTr("These pages are closed while a look is sealed.") : model.headline
    lead: !model.anything ? qsTr("One batch, tasted again and again while it ages, each time blind and beside a bottle that was kept from aging.") : model.next
    primary: model.primary
    primaryShown: model.loaded
    onPrimaryRequested: model.goOn()
    links: [
        LinkButton {
            objectName: "overTimeBegin"
            visible: root.model.anything
            text: qsTr("Begin another series")
            onClicked: root.model.begin()
        },
        LinkButton {
            objectName: "seriesAway"
            visible: root.model.anything
            text: root.model.archived ? qsTr("Put this series back into the list") : qsTr("Put this series away")
            onClicked: root.model.archive(!root.model.archived)
        },
        LinkButton {
            objectName: "seriesAwayShown"
            visible: root.model.anyArchived
            text: root.model.archivedShown ? qsTr("Hide what was put away") : qsTr("Show what was put away too")
            onClicked: root.model.setArchivedShown(!root.model.archivedShown)
        }
    ]
    Component.onCompleted: model.load()

    Panel {
        width: parent.width
        visible: root.model.closed

        Body {
            width: parent.width
            text: qsTr("What you read here would sit at the table with you. Open the key of that look first. You may open the pages all the same: that is written down beside the look, for good.")
        }
        LinkButton {
            objectName: "overTimeAnyway"
            text: qsTr("Open them all the same")
            onClicked: root.model.openAnyway()
        }
    }
    Column {
        width: parent.width
        visible: root.model.series.count > 1

        Repeater {
            model: root.model.series

            RowLink {
                required property int index
                required property string title
                required property bool here
                required property bool archived

                objectName: "series" + index
                width: root.columnWidth
                text: archived ? qsTr("%1 (put away)").arg(title) : title
                line: here ? qsTr("shown below") : ""
                onClicked: root.model.choose(index)
            }
        }
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
    HowPart {
        objectName: "overTimeHow"
        width: parent.width
        lines: root.model.how
    }
    SectionTitle {
        width: parent.width
        visible: root.model.sittings.count > 0
        text: qsTr("The looks")
    }
    Column {
        width: parent.width
        Accessible.role: Accessible.List
        Accessible.name: qsTr("The looks")

        Repeater {
            model: root.model.sittings

            Item {
                id: look

                required property int index
                required property string says
                required property string more
                required property string deed

                width: root.columnWidth
                height: Math.max(told.height + 16, deedButton.height + 8)

                Column {
                    id: told

                    y: 8
                    width: parent.width - deedButton.width - 16

                    Body {
                        width: parent.width
                        text: look.says
                    }
                    Small {
                        width: parent.width
                        visible: text !== ""
                        text: look.more
                    }
                }
                LinkButton {
                    id: deedButton

                    objectName: "look" + look.index
                    x: parent.width - width
                    text: look.deed
                    Accessible.name: qsTr("%1: %2").arg(look.says).arg(look.deed)
                    onClicked: root.model.sitting(look.index)
                }
                HairLine {
                    y: parent.height - 1
                    width: parent.width
                }
            }
        }
    }
    SectionTitle {
        width: parent.width
        visible: root.model.asked.count > 0
        text: qsTr("Looking round")
    }
    Small {
        width: parent.width
        visible: root.model.asked.count > 0
        text: qsTr("Not what the series was begun for: held together, so that looking at many things does not make one of them speak by chance.")
    }
    Repeater {
        model: root.model.asked

        FigurePart {
            required property int index

            objectName: "aged" + index
            width: root.columnWidth
        }
    }
    SectionTitle {
        width: parent.width
        visible: root.model.seen.count > 0
        text: qsTr("Seen in the bottle")
    }
    Repeater {
        model: root.model.seen

        FigurePart {
            required property int index

            objectName: "seen" + index
            width: root.columnWidth
        }
    }
    Column {
        width: parent.width
        visible: root.model.notes.length > 0
        spacing: 4

        SectionTitle {
            width: parent.width
            text: qsTr("What was done to it")
        }
        Repeater {
            model: root.model.notes

            Body {
                required property string modelData

                width: root.columnWidth
                text: modelData
            }
        }
    }
    Flow {
        width: parent.width
        visible: root.model.anything
        spacing: 24

        Field {
            objectName: "calendarFile"
            width: Math.min(parent.width, 520)
            label: qsTr("Write the coming looks to this calendar file (.ics)")
            text: root.model.calendarFile
            error: root.model.wrongField === "calendar" ? root.model.wrong : ""
            onTyped: text => root.model.calendarFile = text
            onAccepted: root.model.writeCalendar()
        }
        LinkButton {
            objectName: "calendarWrite"
            topPadding: 24
            text: qsTr("Write the calendar")
            onClicked: root.model.writeCalendar()
        }
        LinkButton {
            objectName: "tagsPrint"
            topPadding: 24
            text: qsTr("Print tags for its bottles")
            onClicked: root.model.printTags()
        }
    }
    Small {
        objectName: "lookTold"
        width: parent.width
        visible: text !== ""
        text: root.model.told
    }
    Flow {
        width: parent.width
        visible: root.model.anything && !root.model.closed
        spacing: 24

        Field {
            objectName: "seriesFile"
            width: Math.min(parent.width, 520)
            label: qsTr("Write the report of the series to this file (.pdf, .html or .json)")
            text: root.model.reportFile
            error: root.model.wrongField === "out" ? root.model.wrong : ""
            onTyped: text => root.model.reportFile = text
            onAccepted: root.model.writeReport()
        }
        LinkButton {
            objectName: "seriesWrite"
            topPadding: 24
            text: qsTr("Write the report")
            onClicked: root.model.writeReport()
        }
    }
    Small {
        objectName: "seriesTold"
        width: parent.width
        visible: text !== ""
        text: root.model.reported
    }
    DangerQuestion {
        objectName: "seriesThrow"
        width: parent.width
        visible: root.model.mayThrowAway
        link: qsTr("Throw this series away")
        first: qsTr("None of its looks was sealed, so no tasting is lost. Its days and what it was begun for are destroyed. The drinks stay on the shelf.")
        second: qsTr("This cannot be undone. Throw it away?")
        deed: qsTr("Throw it away")
        onConfirmed: root.model.throwAway()
    }
}
