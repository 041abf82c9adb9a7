pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Oddglass.Ui

// My sheet: one cup and what is asked about it, then the next; all cups together at last, and the lock in another corner.
FocusScope {
    id: root

    required property SheetModel model
    readonly property real side: Math.max(24, Math.min(56, width / 22))

    objectName: "mySheetPage"

    Flickable {
        id: flick

        anchors.fill: parent
        anchors.bottomMargin: bar.height
        contentHeight: Math.max(height, column.height + 36)
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        ScrollBar.vertical: ScrollBar {
            policy: flick.contentHeight > flick.height ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
        }

        Connections {
            target: root.model
            function onChanged() {
                if (flick.step !== root.model.stepNumber) {
                    flick.step = root.model.stepNumber;
                    flick.contentY = 0;
                }
            }
        }

        property int step: 0

        Column {
            id: column

            x: Math.max(root.side, (flick.width - 860) / 2)
            y: 20
            width: flick.width - 2 * x
            spacing: 24

            Item {
                width: parent.width
                height: Math.max(place.height, seal.height)

                Lead {
                    id: place

                    objectName: "placeLine"
                    width: parent.width / 2
                    text: qsTr("%1 · %2").arg(root.model.placeLine).arg(root.model.stepLine)
                }
                Lead {
                    id: seal

                    x: parent.width - width
                    width: parent.width / 2
                    text: root.model.sealMark
                    horizontalAlignment: Text.AlignRight
                    font.pixelSize: Theme.body
                }
            }
            // The cup stands beside what is to be done with it, so that the first question is in sight.
            Grid {
                id: task

                width: parent.width
                columns: root.model.code !== "" && column.width >= 640 ? 2 : 1
                spacing: 24
                verticalItemAlignment: Grid.AlignVCenter

                CodeCard {
                    id: cup

                    objectName: "sheetCup"
                    visible: root.model.code !== ""
                    width: 240
                    implicitHeight: codeSize * 1.25 + Theme.body * 2.5 + 16
                    code: root.model.code
                    spokenCode: root.model.spokenCode
                    position: root.model.position
                    acts: false
                }
                Column {
                    width: task.columns === 2 ? column.width - cup.width - task.spacing : column.width
                    spacing: 6

                    Headline {
                        objectName: "headline"
                        width: parent.width
                        text: root.model.headline
                        font.pixelSize: Theme.headline * 0.8
                    }
                    Lead {
                        width: parent.width
                        text: root.model.lead
                        font.pixelSize: Theme.body * 1.125
                    }
                }
            }
            Repeater {
                model: root.model.questions

                SheetQuestion {
                    objectName: "question" + index
                    width: column.width
                    model: root.model
                }
            }
        }
    }
    KeepInSight {
        flick: flick
        column: column
    }
    TastingBar {
        id: bar

        y: parent.height - height
        width: parent.width
        side: root.side
        big: root.height >= 700 * Theme.scale
        lined: flick.contentHeight > flick.height
        text: root.model.goWords
        reason: root.model.goReason
        onActed: root.model.isLast ? root.model.lock() : root.model.next()

        LinkButton {
            objectName: "sheetBack"
            visible: root.model.canGoBack
            text: qsTr("Back")
            onClicked: root.model.back()
        }
    }
}
