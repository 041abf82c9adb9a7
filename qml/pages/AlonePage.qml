pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// Alone, and every other routine in which hands hide the key: one step a screen, then what stood under the cups, one cup a screen.
PageFrame {
    id: root

    required property AloneModel model

    objectName: "alonePage"
    over: model.over
    headline: model.headline
    lead: model.lead
    primary: model.primary
    onPrimaryRequested: model.next()
    onHeadlineChanged: toTop()
    links: [
        LinkButton { objectName: "aloneBack"; visible: root.model.canGoBack; text: qsTr("One back"); onClicked: root.model.stepBack() },
        LinkButton { objectName: "alonePrint"; visible: root.model.atSteps; text: qsTr("Print the steps and the lists"); quiet: true; onClicked: root.model.toPaper() },
        LinkButton { objectName: "alonePlaces"; visible: root.model.mayGoToPlaces; text: qsTr("To the places"); quiet: true; onClicked: root.model.toPlaces() }
    ]
    Component.onCompleted: model.load()

    Column {
        width: parent.width
        visible: root.model.cups.count > 0
        spacing: 12

        Repeater {
            model: root.model.cups

            Column {
                id: row

                required property string where
                required property var codes
                required property var spoken

                width: root.columnWidth
                spacing: 4

                Small {
                    width: parent.width
                    text: row.where
                }
                Flow {
                    width: parent.width
                    spacing: 28

                    Repeater {
                        model: row.codes

                        Text {
                            required property string modelData
                            required property int index

                            text: modelData
                            color: Theme.ink
                            font.family: Theme.displayFamily
                            font.pixelSize: Theme.headline
                            font.underline: true
                            textFormat: Text.PlainText
                            Accessible.role: Accessible.StaticText
                            Accessible.name: row.spoken[index]
                        }
                    }
                }
            }
        }
    }
    Column {
        width: parent.width
        visible: root.model.answers.length > 0
        spacing: 16

        Repeater {
            model: root.model.answers

            OptionPill {
                required property string modelData
                required property int index

                objectName: "aloneAnswer" + index
                width: Math.min(Math.max(implicitWidth, 320), root.columnWidth)
                text: modelData
                onClicked: root.model.answer(index)
            }
        }
    }
}
