pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// An open round: after the reveal, place by place, the same drinks by their names.
PageFrame {
    id: root

    required property OpenRoundModel model

    objectName: "openRoundPage"
    headline: model.headline
    lead: model.lead
    primary: model.asking ? qsTr("Lock") : qsTr("Enough")
    primaryReason: model.reason
    onHeadlineChanged: toTop()
    onPrimaryRequested: model.asking ? model.lock() : model.toCameOut()
    links: [
        LinkButton { objectName: "openRather"; visible: root.model.asking; text: qsTr("I would rather not"); onClicked: root.model.rather() }
    ]
    Component.onCompleted: model.load()

    Column {
        width: parent.width
        visible: !root.model.asking

        Repeater {
            model: root.model.places

            RowLink {
                required property int index
                required property string name
                required property string note
                required property bool done

                objectName: "openPlace" + index
                width: root.columnWidth
                text: name
                line: note
                faded: done
                enabled: !done
                onClicked: root.model.handTo(index)
            }
        }
    }
    Repeater {
        model: root.model.lots

        ChoiceRow {
            required property int index
            required property string name
            required property int picked

            objectName: "openLot" + index + "_"
            width: root.columnWidth
            label: name
            options: root.model.answers
            current: picked
            onChosen: answer => root.model.choose(index, answer)
        }
    }
    Small { width: parent.width; visible: !root.model.asking; text: root.model.note }
}
