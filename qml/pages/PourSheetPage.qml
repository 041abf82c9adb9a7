pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// The pourer's sheet, behind a hand-over. It is forgotten as soon as it is left.
PageFrame {
    id: root

    required property PourModel model

    objectName: "pourPage"
    over: model.opened ? qsTr("Only for the pourer") : ""
    headline: model.opened ? (model.byPlace ? qsTr("Check place by place.") : qsTr("Pour bottle by bottle.")) : qsTr("This page is for the pourer alone.")
    lead: model.opened ? model.lead
                       : qsTr("Everybody who tastes leaves the room, the makers first. Whoever pours made none of it and does not taste. Every opening is recorded.")
    primary: model.opened ? qsTr("Everything stands ready") : qsTr("I pour: open the sheet")
    onPrimaryRequested: model.opened ? model.done() : model.open()
    links: [
        LinkButton {
            objectName: "pourLeave"
            text: root.model.opened ? qsTr("Close the sheet") : qsTr("Back to the places")
            onClicked: root.model.leave()
        },
        LinkButton {
            objectName: "pourOrder"
            visible: root.model.opened
            text: root.model.byPlace ? qsTr("Pour order, bottle by bottle") : qsTr("Second check, place by place")
            onClicked: root.model.byPlace = !root.model.byPlace
        },
        LinkButton {
            objectName: "pourPaper"
            text: qsTr("Print")
            quiet: true
            onClicked: root.model.toPaper()
        }
    ]

    Small {
        width: parent.width
        visible: root.model.opened
        text: root.model.openingsLine
    }
    Column {
        width: parent.width
        visible: root.model.opened

        Repeater {
            model: root.model.cups

            Column {
                id: cup

                required property int index
                required property string section
                required property string code
                required property string spoken
                required property string where
                required property string note
                required property bool ticked
                required property bool spare

                width: root.columnWidth

                SectionTitle {
                    width: parent.width
                    visible: cup.section !== ""
                    topPadding: 20
                    bottomPadding: 6
                    text: cup.section
                    font.pixelSize: Theme.lead
                }
                Row {
                    width: parent.width
                    spacing: 16

                    CheckLine {
                        objectName: "tick" + cup.code
                        width: parent.width - wrong.width - 16
                        enabled: cup.note === ""
                        text: cup.code
                        isCode: true
                        more: cup.note !== "" ? qsTr("%1: %2").arg(cup.where).arg(cup.note) : cup.where
                        ticked: cup.ticked
                        Accessible.name: cup.spare ? qsTr("%1, spare").arg(cup.spoken) : cup.spoken
                        onTickRequested: root.model.tick(cup.index)
                    }
                    LinkButton {
                        id: wrong

                        objectName: "wrong" + cup.code
                        visible: cup.note === ""
                        text: qsTr("Went wrong")
                        quiet: true
                        Accessible.name: qsTr("%1 went wrong").arg(cup.spoken)
                        onClicked: root.model.pick(cup.index)
                    }
                }
                Panel {
                    width: parent.width
                    visible: root.model.picked !== "" && root.model.picked === cup.code
                    alarming: true

                    Body {
                        width: parent.width
                        text: root.model.pickedLine
                    }
                    Flow {
                        width: parent.width
                        spacing: 16

                        Repeater {
                            model: root.model.lotNames

                            OptionPill {
                                required property string modelData
                                required property int index

                                objectName: "really" + index
                                text: qsTr("It holds %1").arg(modelData)
                                onClicked: root.model.pouredReally(index)
                            }
                        }
                        OptionPill { objectName: "notSure"; text: qsTr("I am not sure what it holds"); onClicked: root.model.notSure() }
                        OptionPill { objectName: "spilledCup"; text: qsTr("It was spilled"); onClicked: root.model.spilled() }
                    }
                    LinkButton { objectName: "wrongLeave"; text: qsTr("Nothing after all"); quiet: true; onClicked: root.model.pick(cup.index) }
                }
                HairLine {
                    width: parent.width
                }
            }
        }
    }
}
