pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// Give-aways: nine checks before the seal. What differs needs a way out.
PageFrame {
    id: root

    required property DraftModel model
    required property Router router
    readonly property GiveAwaysModel found: model.giveAways

    objectName: "giveAwaysPage"
    headline: qsTr("What besides the taste could tell them apart?")
    lead: qsTr("Pour a little of each and look. Tick only what differs; what is alike needs nothing.")
    primary: qsTr("Settled")
    primaryReason: root.found.notYet
    onPrimaryRequested: model.settleGiveAways()
    Component.onCompleted: model.load()

    Column {
        width: parent.width
        spacing: 6

        Repeater {
            model: root.found.checks

            Column {
                id: check

                required property int index
                required property string name
                required property string hint
                required property bool different
                required property var ways
                required property int way
                required property string says
                required property bool leaveOut

                width: root.columnWidth
                spacing: 6

                CheckLine {
                    objectName: "check" + check.index
                    width: parent.width
                    text: check.name
                    more: check.hint
                    ticked: check.different
                    onTickRequested: root.found.tick(check.index)
                }
                ChoiceRow {
                    objectName: "wayOut" + check.index
                    x: 38
                    width: parent.width - x
                    visible: check.different
                    label: qsTr("It differs. What is done about it?")
                    options: check.ways
                    current: check.way
                    onChosen: index => root.found.choose(check.index, index)
                }
                Small {
                    objectName: "wayOutSays" + check.index
                    x: 38
                    width: parent.width - x
                    visible: text !== ""
                    text: check.says
                }
                LinkButton {
                    objectName: "leaveOut"
                    x: 38
                    visible: check.leaveOut
                    text: qsTr("Leave that person out")
                    quiet: true
                    onClicked: root.router.go(Router.Question)
                }
            }
        }
    }
    ChoiceRow {
        objectName: "askedLot"
        width: parent.width
        visible: root.found.asked !== ""
        label: root.found.asked
        options: root.model.lotChoices
        current: root.model.expected
        onChosen: index => root.model.chooseExpected(index)
    }
}
