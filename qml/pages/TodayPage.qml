pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// Today: the one next thing; an interrupted table comes first.
PageFrame {
    id: root

    required property TodayModel model

    objectName: "todayPage"
    headline: model.refusal !== "" ? qsTr("The store cannot be opened.") : !model.loaded ? "" : model.hasNext ? model.headline : qsTr("Nothing on the table.")
    lead: model.refusal !== "" ? model.refusal : !model.loaded ? "" : model.hasNext ? model.lead
                        : model.emptyShelf ? qsTr("Put a bottle on the shelf, or look round the demo first.")
                                           : qsTr("Is there a drink you would like to know the truth about?")
    primaryShown: model.loaded || model.refusal !== ""
    primary: model.refusal !== "" ? qsTr("Close the window") : model.hasNext ? qsTr("Go on") : model.emptyShelf ? qsTr("Look round the demo") : qsTr("Start a tasting")
    onPrimaryRequested: model.refusal !== "" ? Qt.quit() : model.hasNext ? model.goOn() : model.emptyShelf ? model.loadDemo() : model.startTasting()
    links: [
        LinkButton {
            objectName: "todayStart"
            visible: root.model.loaded && (root.model.hasNext || root.model.emptyShelf)
            text: qsTr("Start a tasting")
            onClicked: root.model.startTasting()
        }
    ]
    Component.onCompleted: model.load()

    after: [
        Column {
            width: parent.width
            visible: root.model.sessions.count > 0
            spacing: 8

            SectionTitle {
                width: parent.width
                text: qsTr("Tastings")
            }
            Column {
                width: parent.width

                Repeater {
                    model: root.model.sessions

                    RowLink {
                        required property int index
                        required property string title
                        required line
                        required shape

                        objectName: "session" + index
                        width: root.columnWidth
                        text: title
                        onClicked: root.model.open(index)
                    }
                }
            }
        }
    ]
}
