pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// The lots of a drink: bottles that are alike, their count, and what changes it.
Column {
    id: root

    required property BeverageModel model

    spacing: 12

    SectionTitle {
        width: parent.width
        text: qsTr("Lots")
    }
    Small {
        width: parent.width
        visible: root.model.lots.count === 0 && !root.model.lotOpen
        text: qsTr("No bottles yet. A lot is one bottling, one vintage or one purchase: bottles that are alike.")
    }
    Repeater {
        model: root.model.lots

        Column {
            id: lot

            required property int index
            required property string name
            required property string line
            required property string stock
            required property bool archived

            width: root.width
            spacing: 2

            Flow {
                width: parent.width
                spacing: 16

                Body {
                    text: lot.archived ? qsTr("%1 (put away)").arg(lot.name) : lot.name
                    color: lot.archived ? Theme.muted : Theme.ink
                    font.weight: Font.Medium
                }
                Body {
                    text: lot.stock
                }
            }
            Small {
                width: parent.width
                text: lot.line
            }
            Flow {
                width: parent.width
                spacing: 24

                LinkButton { objectName: "lotMove" + lot.index; text: qsTr("Bottles came or went"); Accessible.name: qsTr("%1: %2").arg(lot.name).arg(text); quiet: true; onClicked: root.model.startMove(lot.index) }
                LinkButton { objectName: "lotEdit" + lot.index; text: qsTr("Change"); Accessible.name: qsTr("%1: %2").arg(lot.name).arg(text); quiet: true; onClicked: root.model.editLot(lot.index) }
                LinkButton {
                    objectName: "lotArchive" + lot.index
                    text: lot.archived ? qsTr("Put it back") : qsTr("Put it away")
                    Accessible.name: qsTr("%1: %2").arg(lot.name).arg(text)
                    quiet: true
                    onClicked: root.model.archiveLot(lot.index)
                }
            }
            HairLine {
                width: parent.width
            }
        }
    }
    Panel {
        width: parent.width
        visible: root.model.moveLot !== ""

        SectionTitle {
            width: parent.width
            text: qsTr("Bottles of %1").arg(root.model.moveLot)
        }
        ChoiceRow {
            objectName: "moveKind"
            width: parent.width
            options: [qsTr("added"), qsTr("counted: so many are there"), qsTr("drunk or poured"), qsTr("given away"), qsTr("lost")]
            current: root.model.moveKind
            onChosen: index => root.model.moveKind = index
        }
        Field {
            objectName: "moveBottles"
            width: 180
            label: qsTr("How many bottles")
            text: root.model.moveBottles
            error: root.model.wrongField === "bottles" ? root.model.wrong : ""
            onTyped: text => root.model.moveBottles = text
            onAccepted: root.model.saveMove()
        }
        Flow {
            width: parent.width
            spacing: 24

            LinkButton { objectName: "moveSave"; text: qsTr("Book it"); onClicked: root.model.saveMove() }
            LinkButton { objectName: "moveLeave"; text: qsTr("Leave it"); quiet: true; onClicked: root.model.leaveMove() }
        }
    }
    LinkButton {
        objectName: "lotNew"
        visible: !root.model.lotOpen
        text: qsTr("Add a lot")
        onClicked: root.model.newLot()
    }
    Panel {
        width: parent.width
        visible: root.model.lotOpen

        Flow {
            width: parent.width
            spacing: 24

            Field {
                objectName: "lotName"
                width: 300
                label: qsTr("What this lot is called")
                text: root.model.lotName
                hint: qsTr("such as: bottled in March, or: vintage 2024")
                error: root.model.wrongField === "lot_name" ? root.model.wrong : ""
                onTyped: text => root.model.lotName = text
            }
            Field {
                objectName: "lotMl"
                width: 140
                label: qsTr("Bottle, %1").arg(root.model.volumeUnit)
                text: root.model.lotMl
                error: root.model.wrongField === "bottle_ml" ? root.model.wrong : ""
                onTyped: text => root.model.lotMl = text
            }
            Field {
                objectName: "lotPackaged"
                width: 200
                label: qsTr("Bottled on")
                text: root.model.lotPackaged
                hint: qsTr("such as 2026-03-14; may stay empty")
                error: root.model.wrongField === "packaged_on" ? root.model.wrong : ""
                onTyped: text => root.model.lotPackaged = text
            }
            Field {
                objectName: "lotBest"
                width: 200
                visible: root.model.origin === 1
                label: qsTr("Best before")
                text: root.model.lotBest
                error: root.model.wrongField === "best_before" ? root.model.wrong : ""
                onTyped: text => root.model.lotBest = text
            }
            Field {
                objectName: "lotStorage"
                width: 240
                label: qsTr("How it is kept")
                text: root.model.lotStorage
                hint: qsTr("such as: cellar, %1").arg(root.model.coolExample)
                error: root.model.wrongField === "storage" ? root.model.wrong : ""
                onTyped: text => root.model.lotStorage = text
            }
            Field {
                objectName: "lotSource"
                width: 240
                visible: root.model.origin === 1
                label: qsTr("Where it was bought")
                text: root.model.lotSource
                error: root.model.wrongField === "source" ? root.model.wrong : ""
                onTyped: text => root.model.lotSource = text
            }
        }
        Flow {
            width: parent.width
            spacing: 24

            LinkButton { objectName: "lotSave"; text: qsTr("Keep this lot"); onClicked: root.model.saveLot() }
            LinkButton { objectName: "lotLeave"; text: qsTr("Leave it"); quiet: true; onClicked: root.model.leaveLot() }
        }
    }
}
