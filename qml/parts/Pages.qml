import QtQuick
import Oddglass.Ui

// The page that the router names.
FocusScope {
    id: root

    required property App app

    focus: true

    Loader {
        anchors.fill: parent
        focus: true
        sourceComponent: root.pageOf(root.app.router.page)
        onLoaded: (item as FocusScope).forceActiveFocus()
    }

    function pageOf(page: int): Component {
        switch (page) {
        case Router.Shelf: return shelf;
        case Router.Beverage: return beverage;
        case Router.Question: return question;
        case Router.Takes: return takes;
        case Router.Care: return care;
        case Router.Seal: return seal;
        case Router.PourSheet: return pourSheet;
        case Router.Places: return places;
        case Router.HandOver: return handOver;
        case Router.MyCups: return myCups;
        case Router.Locked: return locked;
        case Router.OpenKey: return openKey;
        case Router.CameOut: return cameOut;
        case Router.History: return history;
        case Router.People: return people;
        case Router.Keeping: return keeping;
        default: return today;
        }
    }

    Component { id: today; TodayPage { model: root.app.today } }
    Component { id: shelf; ShelfPage { model: root.app.shelf } }
    Component { id: beverage; BeveragePage { model: root.app.beverage } }
    Component { id: question; QuestionPage { model: root.app.draft } }
    Component { id: takes; TakesPage { model: root.app.draft } }
    Component { id: care; CarePage { model: root.app.draft } }
    Component { id: seal; SealPage { model: root.app.draft } }
    Component { id: pourSheet; PourSheetPage { model: root.app.pour } }
    Component { id: places; PlacesPage { model: root.app.board; router: root.app.router } }
    Component { id: handOver; HandOverPage { model: root.app.seat } }
    Component { id: myCups; MyCupsPage { model: root.app.cups } }
    Component { id: locked; LockedPage { model: root.app.cups } }
    Component { id: openKey; OpenKeyPage { model: root.app.key; router: root.app.router } }
    Component { id: cameOut; CameOutPage { model: root.app.cameOut } }
    Component { id: history; HistoryPage { model: root.app.history } }
    Component { id: people; PeoplePage { model: root.app.people } }
    Component { id: keeping; KeepingPage { model: root.app.keeping; preferences: root.app.preferences } }
}
