#include "modeler/command_line/interrupts.h"

namespace roundlay {

namespace {

volatile std::sig_atomic_t flag = 0;

extern "C" void raise_flag(int) {
    flag = 1;
}

} // namespace

CatchInterrupts::CatchInterrupts() {
    flag = 0;
    struct sigaction action = {};
    action.sa_handler = raise_flag;
    action.sa_flags = static_cast<int>(SA_RESETHAND | SA_RESTART);
    for (std::size_t i = 0; i < signals.size(); ++i) {
        ::sigaction(signals[i], nullptr, &before_[i]);
        // What was told to be ignored (nohup) stays ignored.
        if (before_[i].sa_handler != SIG_IGN) ::sigaction(signals[i], &action, nullptr);
    }
}

CatchInterrupts::~CatchInterrupts() {
    for (std::size_t i = 0; i < signals.size(); ++i)
        ::sigaction(signals[i], &before_[i], nullptr);
}

bool CatchInterrupts::raised() {
    return flag != 0;
}

} // namespace roundlay
