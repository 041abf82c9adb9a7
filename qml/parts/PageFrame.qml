pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic

// A page: where one is, what it says, its evidence, and one main action at the end of the reading line. What grows without end, such as a list, comes after it.
FocusScope {
    id: root

    property string over: ""
    property string headline: ""
    property string lead: ""
    property string shape: ""
    property string primary: ""
    property string primaryReason: ""
    property bool primaryShown: root.primary !== ""
    default property alias content: body.data
    property alias links: links.data
    property alias after: after.data
    readonly property real columnWidth: column.width

    signal primaryRequested()

    // A page that goes on to its next step begins with its headline again.
    function toTop() {
        flick.contentY = 0;
    }

    Flickable {
        id: flick

        anchors.fill: parent
        contentWidth: width
        contentHeight: column.height + column.y + 48
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        ScrollBar.vertical: ScrollBar {
            policy: flick.contentHeight > flick.height ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
        }

        Column {
            id: column

            x: Theme.tasting ? (flick.width - width) / 2 : Math.max(28, Math.min(72, (flick.width - Theme.column) / 2))
            y: Theme.tasting ? 28 : 44
            width: Math.min(Theme.column, flick.width - 56)
            spacing: 28

            Column {
                width: parent.width
                spacing: 10

                Small {
                    width: parent.width
                    visible: text !== ""
                    text: root.over
                }
                Row {
                    width: parent.width
                    spacing: 20

                    VerdictMark {
                        id: mark

                        y: (Theme.headline * 1.15 - height) / 2
                        visible: root.shape !== ""
                        shape: root.shape
                    }
                    Column {
                        width: parent.width - (mark.visible ? mark.width + 20 : 0)
                        spacing: 8

                        Headline {
                            objectName: "headline"
                            width: parent.width
                            visible: text !== ""
                            text: root.headline
                        }
                        Lead {
                            width: parent.width
                            visible: text !== ""
                            text: root.lead
                        }
                    }
                }
            }
            Column {
                id: body

                width: parent.width
                spacing: 24
            }
            Flow {
                width: parent.width
                spacing: 24
                visible: root.primaryShown || links.children.length > 0

                PrimaryButton {
                    id: primary

                    objectName: "primary"
                    visible: root.primaryShown
                    text: root.primary
                    reason: root.primaryReason
                    onActed: root.primaryRequested()
                }
                Flow {
                    id: links

                    readonly property real beside: column.width - (primary.visible ? primary.width + 24 : 0)

                    width: beside >= 280 ? beside : column.width
                    topPadding: primary.visible ? (primary.button.height - Theme.target) / 2 : 0
                    spacing: 24
                }
            }
            Column {
                id: after

                width: parent.width
                visible: children.length > 0
                spacing: 24
            }
        }
    }

    KeepInSight {
        flick: flick
        column: column
    }
}
