pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// Care: read aloud before anything is poured.
PageFrame {
    id: root

    required property DraftModel model

    objectName: "carePage"
    headline: model.careHeadline
    primary: qsTr("On to the seal")
    primaryReason: model.careSettled ? "" : qsTr("Tick the line above first.")
    onPrimaryRequested: model.toSeal()
    Component.onCompleted: model.load()

    Column {
        width: parent.width
        spacing: 14

        Repeater {
            model: root.model.care

            Body {
                required property string modelData

                width: root.columnWidth
                text: modelData
                font.pixelSize: Theme.body * 1.125
            }
        }
    }
    CheckLine {
        objectName: "careSettled"
        width: parent.width
        text: qsTr("Everyone has been told")
        more: qsTr("Whoever sits down is asked again at their place.")
        ticked: root.model.careSettled
        onTickRequested: ticked => root.model.settleCare(ticked)
    }
}
