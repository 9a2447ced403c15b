#include "exporters/step/library_settings.h"

#include <Interface_Static.hxx>
#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <Message_Printer.hxx>
#include <STEPControl_Controller.hxx>

namespace roundlay::step {

namespace {
std::mutex writing;
} // namespace

LibrarySettings::LibrarySettings() : lock_(writing) {
    quieten();
    STEPControl_Controller::Init(); // before this the settings are not there
    set("write.step.schema", "AP214IS");
    set("write.step.unit", "MM");
    set("write.step.assembly", 0);
    set("write.surfacecurve.mode", 0); // no curves in the planes of faces: half the size
}

LibrarySettings::~LibrarySettings() {
    for (const Saved &saved : saved_) {
        if (saved.is_text)
            Interface_Static::SetCVal(saved.name, saved.text.c_str());
        else
            Interface_Static::SetIVal(saved.name, saved.number);
    }
    std::size_t next = 0;
    for (const Handle(Message_Printer) & printer : Message::DefaultMessenger()->Printers())
        if (next < loudness_.size()) printer->SetTraceLevel(static_cast<Message_Gravity>(loudness_[next++]));
}

void LibrarySettings::quieten() {
    for (const Handle(Message_Printer) & printer : Message::DefaultMessenger()->Printers()) {
        loudness_.push_back(printer->GetTraceLevel());
        printer->SetTraceLevel(Message_Fail);
    }
}

void LibrarySettings::set(const char *name, const char *value) {
    saved_.push_back({name, true, 0, Interface_Static::CVal(name)});
    Interface_Static::SetCVal(name, value);
}

void LibrarySettings::set(const char *name, int value) {
    saved_.push_back({name, false, Interface_Static::IVal(name), {}});
    Interface_Static::SetIVal(name, value);
}

} // namespace roundlay::step
