pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// Words: what tasters call what they smell, taste and feel, class by class.
PageFrame {
    id: root

    required property WordsModel model

    objectName: "wordsPage"
    headline: qsTr("Words")
    lead: qsTr("What to call it. Open a class when you hunt for a fault; a word's own page says what often lies behind it.")
    primary: qsTr("Add a word")
    onPrimaryRequested: model.add()
    links: [
        LinkButton {
            objectName: "wordsRetired"
            text: root.model.retiredShown ? qsTr("Hide retired words") : qsTr("Show retired words too")
            onClicked: root.model.retiredShown = !root.model.retiredShown
        }
    ]
    Component.onCompleted: model.load()

    Field {
        objectName: "wordsFind"
        width: Math.min(parent.width, 420)
        label: qsTr("Find a word, another name for it, or a compound")
        text: root.model.wanted
        onTyped: text => root.model.wanted = text
    }
    ChoiceRow {
        objectName: "wordsDrink"
        width: parent.width
        label: qsTr("Said of")
        options: root.model.drinks
        current: root.model.drink
        onChosen: index => root.model.drink = index
    }
    EmptyState {
        width: parent.width
        visible: root.model.loaded && root.model.lines.count === 0
        text: qsTr("No word in the list is called that. If it is the one you need, add it.")
    }
    Column {
        width: parent.width

        Repeater {
            model: root.model.lines

            WordLine {
                required property int index
                required property string name
                required isClass
                required isOpen
                required faded
                required line
                required mark

                objectName: "wordLine" + index
                width: root.columnWidth
                text: name
                onClicked: root.model.take(index)
            }
        }
    }
    Small {
        width: parent.width
        visible: root.model.loaded && root.model.lines.count > 0
        text: qsTr("%1. %2").arg(root.model.countLine).arg(root.model.ownLine)
    }
}
