pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// What a drink is: name, kind, strength, ingredients that matter, makers.
Column {
    id: root

    required property BeverageModel model

    spacing: 24

    Field {
        objectName: "name"
        width: Math.min(parent.width, 520)
        label: qsTr("Name")
        text: root.model.name
        error: root.model.wrongField === "name" ? root.model.wrong : ""
        onTyped: text => root.model.name = text
        onAccepted: root.model.save()
    }
    ChoiceRow {
        objectName: "origin"
        width: parent.width
        label: qsTr("Where it comes from")
        options: [qsTr("made here"), qsTr("bought, or somebody else's")]
        current: root.model.origin
        onChosen: index => root.model.origin = index
    }
    ChoiceRow {
        objectName: "kind"
        width: parent.width
        label: qsTr("Kind")
        options: [qsTr("beer"), qsTr("mead"), qsTr("cider"), qsTr("wine"), qsTr("other")]
        current: root.model.kind
        onChosen: index => root.model.kind = index
    }
    Field {
        objectName: "recipe"
        width: Math.min(parent.width, 520)
        visible: root.model.origin === 0
        label: qsTr("Recipe")
        text: root.model.recipe
        hint: qsTr("in your own words; batches of one recipe stand side by side. May stay empty")
        error: root.model.wrongField === "recipe" ? root.model.wrong : ""
        onTyped: text => root.model.recipe = text
    }
    Flow {
        width: parent.width
        spacing: 24

        Field {
            objectName: "og"
            width: 180
            label: qsTr("Original gravity, %1").arg(root.model.gravityUnit)
            text: root.model.originalGravity
            hint: qsTr("such as %1; may stay empty").arg(root.model.gravityExample)
            error: root.model.wrongField === "og" ? root.model.wrong : ""
            onTyped: text => root.model.originalGravity = text
        }
        Field {
            objectName: "fg"
            width: 180
            label: qsTr("Final gravity, %1").arg(root.model.gravityUnit)
            text: root.model.finalGravity
            error: root.model.wrongField === "fg" ? root.model.wrong : ""
            onTyped: text => root.model.finalGravity = text
        }
        Field {
            objectName: "abv"
            width: 180
            label: qsTr("Alcohol, % by volume")
            text: root.model.abv
            hint: qsTr("needed before it is poured")
            error: root.model.wrongField === "abv" ? root.model.wrong : ""
            onTyped: text => root.model.abv = text
        }
    }
    ChoiceRow {
        objectName: "abvFrom"
        width: parent.width
        visible: root.model.abv !== ""
        label: qsTr("Where the strength comes from")
        options: [qsTr("the label"), qsTr("the gravities"), qsTr("measured"), qsTr("a guess")]
        current: root.model.abvFrom
        error: root.model.wrongField === "abv_from" ? root.model.wrong : ""
        onChosen: index => root.model.abvFrom = index
    }
    ChoiceRow {
        objectName: "ingredients"
        width: parent.width
        label: qsTr("Ingredients that matter to allergic people")
        options: [qsTr("known"), qsTr("none"), qsTr("not known")]
        current: root.model.ingredients
        hint: qsTr("Not known is an answer too; it is said aloud before anything is poured.")
        error: root.model.wrongField === "ingredients" || root.model.wrongField === "allergens" ? root.model.wrong : ""
        onChosen: index => root.model.ingredients = index
    }
    Flow {
        width: parent.width
        visible: root.model.ingredients === 0
        spacing: 8

        Repeater {
            model: root.model.allergens

            CheckLine {
                required property int index
                required property string name
                required ticked

                objectName: "allergen" + index
                width: 190 * Theme.scale
                text: name
                onTickRequested: root.model.tickAllergen(index)
            }
        }
    }
    Column {
        width: parent.width
        visible: root.model.origin === 0
        spacing: 4

        Small {
            width: parent.width
            text: root.model.makers.count > 0 ? qsTr("Who had a hand in it. Makers taste beside the panel and never count in it.")
                                              : qsTr("Who had a hand in it can be said once somebody stands under People.")
        }
        Flow {
            width: parent.width
            spacing: 8

            Repeater {
                model: root.model.makers

                CheckLine {
                    required property int index
                    required property string name
                    required ticked

                    objectName: "maker" + index
                    width: 220 * Theme.scale
                    text: name
                    onTickRequested: root.model.tickMaker(index)
                }
            }
        }
    }
}
