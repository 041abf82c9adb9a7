pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// Keeping: backups, a check, files in and out, what the host has settled, and how this machine likes its pages.
PageFrame {
    id: root

    required property KeepingModel model
    required property Preferences preferences

    objectName: "keepingPage"
    headline: qsTr("Keeping")
    lead: model.file
    primary: qsTr("Back up")
    onPrimaryRequested: model.backUp()
    links: [
        LinkButton { objectName: "keepingCheck"; text: qsTr("Check the file"); onClicked: root.model.check() }
    ]
    Component.onCompleted: model.load()

    Body {
        objectName: "keepingTold"
        width: parent.width
        visible: text !== ""
        text: root.model.told
        Accessible.role: Accessible.AlertMessage
    }
    Column {
        width: parent.width
        spacing: 12

        SectionTitle {
            width: parent.width
            text: qsTr("Backups")
        }
        Small {
            width: parent.width
            visible: root.model.backups.count === 0
            text: qsTr("None yet. One is made by itself after every opening of a key.")
        }
        Repeater {
            model: root.model.backups

            RowLink {
                required property int index
                required property string when
                required property string why
                required property bool there

                objectName: "backup" + index
                width: root.columnWidth
                enabled: there
                faded: !there
                text: when
                line: why
                onClicked: root.model.pickBackup(index)
            }
        }
        Field {
            objectName: "restoreFrom"
            width: parent.width
            label: qsTr("Backup to put back")
            text: root.model.restoreFrom
            error: root.model.wrongField === "restore" ? root.model.wrong : ""
            onTyped: text => root.model.restoreFrom = text
        }
        DangerQuestion {
            objectName: "restore"
            width: parent.width
            link: qsTr("Put this backup in place of what is here")
            first: qsTr("What was written since that backup will not be in the program any more. It is kept beside it as a file. Put the backup in place?")
            second: qsTr("Everything shown will be as it was then. Put it in place all the same?")
            deed: qsTr("Put it in place")
            onConfirmed: root.model.restore()
        }
    }
    Column {
        width: parent.width
        spacing: 12

        SectionTitle {
            width: parent.width
            text: qsTr("Files in and out")
        }
        Field {
            objectName: "importFrom"
            width: parent.width
            label: qsTr("File to take in")
            hint: qsTr("Everything in it is checked first; it is taken in whole or not at all.")
            text: root.model.importFrom
            error: root.model.wrongField === "import" ? root.model.wrong : ""
            onTyped: text => root.model.importFrom = text
            onAccepted: root.model.importFile()
        }
        LinkButton { objectName: "importGo"; text: qsTr("Take it in"); onClicked: root.model.importFile() }
        Field {
            objectName: "exportTo"
            width: parent.width
            label: qsTr("Folder to write everything to")
            text: root.model.exportTo
            error: root.model.wrongField === "out" ? root.model.wrong : ""
            onTyped: text => root.model.exportTo = text
            onAccepted: root.model.exportAll()
        }
        LinkButton { objectName: "exportGo"; text: qsTr("Write it out"); onClicked: root.model.exportAll() }
    }
    Column {
        width: parent.width
        spacing: 12

        SectionTitle {
            width: parent.width
            text: qsTr("What you have settled")
        }
        Flow {
            width: parent.width
            spacing: 28

            NumberField {
                objectName: "ceiling"
                width: Math.min(root.columnWidth, 320 * Theme.scale)
                label: qsTr("Most alcohol offered to one person an evening")
                unit: qsTr("g")
                hint: qsTr("20 g is our own figure. No amount is called safe here; your local law and a doctor know better.")
                text: root.model.ceiling
                error: root.model.wrongField === "ceiling_grams" ? root.model.wrong : ""
                onTyped: text => root.model.ceiling = text
                onStepRequested: by => root.model.stepCeiling(by)
            }
            Field {
                objectName: "country"
                width: Math.min(root.columnWidth, 280 * Theme.scale)
                label: qsTr("Country, for standard drinks")
                hint: qsTr("two letters: GB AU NZ CA US AT FR IE JP; others see grams only")
                text: root.model.country
                error: root.model.wrongField === "country" ? root.model.wrong : ""
                onTyped: text => root.model.country = text
            }
        }
        LinkButton { objectName: "settle"; text: qsTr("Settle it"); onClicked: root.model.settleRules() }
    }
    Column {
        width: parent.width
        spacing: 16

        SectionTitle {
            width: parent.width
            text: qsTr("Language and units")
        }
        ChoiceRow {
            objectName: "language"
            width: parent.width
            label: qsTr("Language")
            options: [qsTr("as the system"), "English", "Deutsch"]
            current: root.preferences.language
            onChosen: index => root.preferences.language = index
        }
        ChoiceRow {
            objectName: "volumeUnit"
            width: parent.width
            label: qsTr("Amounts")
            options: [qsTr("millilitres"), qsTr("US fluid ounces"), qsTr("imperial fluid ounces")]
            current: root.preferences.volume
            onChosen: index => root.preferences.volume = index
        }
        ChoiceRow {
            objectName: "temperatureUnit"
            width: parent.width
            label: qsTr("Temperatures")
            options: [qsTr("Celsius"), qsTr("Fahrenheit")]
            current: root.preferences.temperature
            onChosen: index => root.preferences.temperature = index
        }
        ChoiceRow {
            objectName: "gravityUnit"
            width: parent.width
            label: qsTr("Gravities")
            options: [qsTr("specific gravity"), qsTr("degrees Plato")]
            current: root.preferences.gravity
            onChosen: index => root.preferences.gravity = index
        }
        Small {
            width: parent.width
            text: qsTr("Pages, fields and paper follow this. The file keeps whole millilitres and specific gravities, and the command line stays with them.")
        }
    }
    Column {
        width: parent.width
        spacing: 16

        SectionTitle {
            width: parent.width
            text: qsTr("How this window looks")
        }
        ChoiceRow {
            objectName: "light"
            width: parent.width
            options: [qsTr("light or dark as the system"), qsTr("light"), qsTr("dark")]
            current: root.preferences.light
            onChosen: index => root.preferences.light = index
        }
        Row {
            spacing: 12

            StepButton { objectName: "textSmaller"; text: "\u2212"; spoken: qsTr("Smaller text"); onClicked: root.preferences.smallerText() }
            Body { text: qsTr("Text %1").arg(root.preferences.textSize); height: 44; verticalAlignment: Text.AlignVCenter }
            StepButton { objectName: "textLarger"; text: "+"; spoken: qsTr("Larger text"); onClicked: root.preferences.largerText() }
        }
    }
}
