pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// Places: who waits, tastes and has locked. In the strip, what may happen at a table.
PageFrame {
    id: root

    required property BoardModel model
    required property Router router

    objectName: "placesPage"
    over: model.over
    headline: model.headline
    lead: model.lead
    primary: model.readWaits ? qsTr("Turn the cups over") : model.pourWaits ? (model.byHand ? qsTr("To the steps") : qsTr("To the pour sheet")) : model.lookIsDue ? qsTr("Ask: go on or stop?") : model.allLocked ? qsTr("Close the table") : qsTr("Hand over")
    onPrimaryRequested: model.readWaits || model.pourWaits ? model.pour() : model.lookIsDue ? model.lookAfterRound() : model.allLocked ? model.closeTable() : model.handOver(-1)
    links: [
        LinkButton { objectName: "placesPour"; visible: root.model.canPour && !root.model.pourWaits && !root.model.readWaits; text: root.model.byHand ? qsTr("The steps") : qsTr("Pour sheet"); onClicked: root.model.pour() },
        LinkButton { objectName: "placesLook"; visible: root.model.canLook && !root.model.lookIsDue; text: qsTr("Ask: go on or stop?"); onClicked: root.model.lookAfterRound() },
        LinkButton { objectName: "placesHandOver"; visible: root.model.pourWaits; text: qsTr("Hand over"); onClicked: root.model.handOver(-1) },
        LinkButton { objectName: "placesClose"; visible: root.model.anybody && !root.model.allLocked; text: qsTr("Close the table"); onClicked: root.model.closeTable() },
        LinkButton { objectName: "placesTypeIn"; visible: root.model.anybody; text: qsTr("Type in a sheet"); quiet: true; onClicked: root.router.go(Router.TypeIn) },
        LinkButton { objectName: "placesPaper"; text: qsTr("Print"); quiet: true; onClicked: root.router.go(Router.Paper) },
        LinkButton { objectName: "placesKey"; text: qsTr("End it another way"); quiet: true; onClicked: root.router.go(Router.OpenKey) },
        LinkButton { objectName: "placesAway"; text: qsTr("Leave the table"); quiet: true; onClicked: root.router.go(Router.Today) }
    ]
    Component.onCompleted: model.load()

    HowPart {
        objectName: "placesHow"
        width: parent.width
        lines: root.model.how
    }
    Panel {
        width: parent.width
        visible: root.model.closeQuestion !== ""
        alarming: true

        Body {
            width: parent.width
            text: root.model.closeQuestion
            Accessible.role: Accessible.AlertMessage
        }
        Flow {
            width: parent.width
            spacing: 24

            LinkButton { objectName: "closeNo"; text: qsTr("No, keep it open"); onClicked: root.model.keepOpen() }
            LinkButton { objectName: "closeYes"; text: qsTr("Yes, close it"); danger: true; onClicked: root.model.closeAnyway() }
        }
    }
    Flow {
        width: parent.width
        spacing: 12

        OptionPill { objectName: "happenSaid"; chosen: root.model.happening === "said"; text: qsTr("Something was said"); onClicked: root.model.startHappening("said") }
        OptionPill { objectName: "happenSpilled"; chosen: root.model.happening === "spilled"; text: qsTr("Spilled"); onClicked: root.model.startHappening("spilled") }
        OptionPill { objectName: "happenLate"; text: qsTr("Late guest"); onClicked: root.model.lateGuest() }
        OptionPill { objectName: "happenAside"; chosen: root.model.happening === "aside"; text: qsTr("Cups mixed up"); onClicked: root.model.startHappening("aside") }
        OptionPill { objectName: "happenSwapped"; chosen: root.model.happening === "swapped"; text: qsTr("Mats swapped"); onClicked: root.model.startHappening("swapped") }
        OptionPill { objectName: "happenWrong"; chosen: root.model.happening === "wrong"; text: qsTr("Sat at the wrong place"); onClicked: root.model.startHappening("wrong") }
        OptionPill { objectName: "happenBack"; chosen: root.model.happening === "back"; text: qsTr("Answers taken back"); onClicked: root.model.startHappening("back") }
    }
    Panel {
        width: parent.width
        visible: root.model.happening === "said"

        Body {
            width: parent.width
            text: qsTr("In whose hearing? Tick nobody when everybody heard it. The verdict is worked out with and without those answers.")
        }
        Flow {
            width: parent.width
            spacing: 8

            Repeater {
                model: root.model.heardBy

                CheckLine {
                    required property int index
                    required property string name
                    required property string note
                    required ticked

                    objectName: "heard" + index
                    width: 220 * Theme.scale
                    text: name
                    more: note
                    onTickRequested: root.model.tickHeard(index)
                }
            }
        }
        Field {
            objectName: "saidWords"
            width: parent.width
            label: qsTr("What was said, if you like; kept shut until the key is opened")
            text: root.model.saidWords
            onTyped: text => root.model.saidWords = text
        }
        LinkButton { objectName: "saidKeep"; text: qsTr("Put it on record"); onClicked: root.model.noteSaid() }
    }
    Panel {
        width: parent.width
        visible: root.model.happening !== "" && root.model.happening !== "said"

        ChoiceRow {
            objectName: "happenedAt"
            width: parent.width
            label: root.model.happening === "swapped" ? qsTr("Which two places? One of them:") : root.model.happening === "back" ? qsTr("Whose answers?") : qsTr("At which place?")
            options: root.model.seatedPlaces
            current: root.model.happenedAt
            error: root.model.seatedPlaces.length === 0 ? qsTr("Nobody has cups before them.") : ""
            onChosen: index => root.model.pickPlace(index)
        }
        ChoiceRow {
            objectName: "spilledCode"
            width: parent.width
            visible: root.model.happening === "spilled" && root.model.codesThere.length > 0
            label: qsTr("Which cup?")
            options: root.model.codesThere
            onChosen: index => root.model.noteSpilled(index)
        }
        ChoiceRow {
            objectName: "otherAt"
            width: parent.width
            visible: root.model.happening === "swapped" && root.model.happenedAt >= 0
            label: qsTr("And the other:")
            options: root.model.seatedPlaces
            current: root.model.otherAt
            onChosen: index => root.model.pickOther(index)
        }
        ChoiceRow {
            objectName: "happenedRound"
            width: parent.width
            visible: (root.model.happening === "aside" || root.model.happening === "swapped") && root.model.roundsThere.length > 1
            label: qsTr("In which round?")
            options: root.model.roundsThere
            current: root.model.happenedRound
            onChosen: index => root.model.pickRound(index)
        }
        ChoiceRow {
            objectName: "asideReason"
            width: parent.width
            visible: root.model.happening === "aside" && root.model.happenedRound >= 0
            label: qsTr("These cups will not count. Why?")
            options: root.model.asideReasons
            onChosen: index => root.model.setAside(index)
        }
        Body {
            objectName: "comesOfIt"
            width: parent.width
            visible: text !== ""
            text: root.model.comesOfIt
            Accessible.role: Accessible.AlertMessage
        }
        LinkButton {
            objectName: "happenedConfirm"
            visible: root.model.comesOfIt !== ""
            text: root.model.happening === "back" ? qsTr("Yes, take them all back") : qsTr("Put it on record")
            danger: root.model.happening === "back"
            onClicked: root.model.confirmHappening()
        }
    }
    Column {
        width: parent.width

        HairLine {
            width: parent.width
        }
        Repeater {
            model: root.model.places

            PlaceLine {
                required property int index

                width: root.columnWidth
                onHandRequested: root.model.handOver(index)
            }
        }
    }
}
