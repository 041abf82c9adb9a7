pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// Open the key: who is missing, what happened so far; also the two other ways an evening can end.
PageFrame {
    id: root

    required property KeyModel model
    required property Router router

    property bool otherWays: false

    objectName: "openKeyPage"
    headline: model.headline
    lead: model.lead
    primary: model.readFirst ? qsTr("Read the cups off") : qsTr("Open the key")
    primaryShown: model.canOpen
    onPrimaryRequested: model.readFirst ? model.toCups() : model.open()
    links: [
        LinkButton { objectName: "keyPlaces"; visible: !root.model.canOpen; text: qsTr("Back to the places"); onClicked: root.router.go(Router.Places) },
        LinkButton { objectName: "keyLater"; visible: root.model.canOpen; text: qsTr("Later"); onClicked: root.router.go(Router.Today) },
        LinkButton {
            objectName: "keyOther"
            visible: root.model.canOpen && !root.otherWays
            quiet: true
            text: qsTr("End it another way")
            onClicked: root.otherWays = true
        }
    ]
    Component.onCompleted: model.load()

    Column {
        width: parent.width
        visible: root.model.happened.length > 0
        spacing: 6

        SectionTitle {
            width: parent.width
            text: qsTr("What happened so far")
        }
        Repeater {
            model: root.model.happened

            Body {
                required property string modelData

                width: root.columnWidth
                text: modelData
            }
        }
    }
    Column {
        width: parent.width
        visible: root.model.canEnd && (root.otherWays || !root.model.canOpen)
        spacing: 16

        HairLine {
            width: parent.width
        }
        Small {
            width: parent.width
            text: qsTr("An evening can also end without a verdict. Both ways stay on record for good.")
        }
        Field {
            objectName: "endReason"
            width: parent.width
            label: qsTr("Reason, for the record")
            text: root.model.reason
            error: root.model.wrongField === "reason" ? root.model.wrong : ""
            onTyped: text => root.model.reason = text
        }
        DangerQuestion {
            objectName: "abandon"
            width: parent.width
            link: qsTr("Give it up without opening the key")
            first: qsTr("The session ends here and the key stays shut. The answers are kept, but no verdict can come of them. Give it up?")
            second: qsTr("This cannot be undone. Give it up all the same?")
            deed: qsTr("Give it up")
            onConfirmed: root.model.abandon()
        }
        DangerQuestion {
            objectName: "breakSeal"
            width: parent.width
            link: qsTr("Break the seal and look")
            first: qsTr("Whoever looks before everybody has answered is no longer blind. The session ends without a verdict. Break the seal?")
            second: qsTr("The report will always say that the key was opened early. Break it all the same?")
            deed: qsTr("Break the seal")
            onConfirmed: root.model.breakSeal()
        }
    }
}
