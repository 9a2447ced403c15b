#include "exporters/step/library_settings.h"
#include "tests/support/catch.h"

#include <Interface_Static.hxx>
#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <Message_Printer.hxx>
#include <STEPControl_Controller.hxx>

using namespace roundlay;

TEST_CASE("The library's global settings are put back after writing") {
    STEPControl_Controller::Init();
    Interface_Static::SetCVal("write.step.unit", "INCH");
    Interface_Static::SetIVal("write.surfacecurve.mode", 1);
    const Message_Gravity loud = Message::DefaultMessenger()->Printers().First()->GetTraceLevel();
    {
        const step::LibrarySettings settings;
        CHECK(std::string(Interface_Static::CVal("write.step.unit")) == "MM");
        CHECK(Interface_Static::IVal("write.surfacecurve.mode") == 0);
        CHECK(Message::DefaultMessenger()->Printers().First()->GetTraceLevel() > loud);
    }
    CHECK(std::string(Interface_Static::CVal("write.step.unit")) == "INCH");
    CHECK(Interface_Static::IVal("write.surfacecurve.mode") == 1);
    CHECK(Message::DefaultMessenger()->Printers().First()->GetTraceLevel() == loud);
    Interface_Static::SetCVal("write.step.unit", "MM");
}
