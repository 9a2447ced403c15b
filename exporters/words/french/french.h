// The French catalogue: a table for each subject, sorted by its English.
#pragma once

#include "exporters/words/catalogue.h"

namespace roundlay {

inline constexpr std::string_view french_semicolon = " ; ";

std::span<const Entry> french_of_book();
std::span<const Entry> french_of_cut_sheets();
std::span<const Entry> french_of_cuts();
std::span<const Entry> french_of_document();
std::span<const Entry> french_of_drawings();
std::span<const Entry> french_of_exports();
std::span<const Entry> french_of_fastenings();
std::span<const Entry> french_of_floors();
std::span<const Entry> french_of_forms();
std::span<const Entry> french_of_lists();
std::span<const Entry> french_of_machines();
std::span<const Entry> french_of_machining();
std::span<const Entry> french_of_measured();
std::span<const Entry> french_of_mends();
std::span<const Entry> french_of_openings();
std::span<const Entry> french_of_options();
std::span<const Entry> french_of_page();
std::span<const Entry> french_of_paper();
std::span<const Entry> french_of_plan();
std::span<const Entry> french_of_program();
std::span<const Entry> french_of_raising();
std::span<const Entry> french_of_record();
std::span<const Entry> french_of_report();
std::span<const Entry> french_of_review();
std::span<const Entry> french_of_rounds();
std::span<const Entry> french_of_router();
std::span<const Entry> french_of_schedules();
std::span<const Entry> french_of_steps();
std::span<const Entry> french_of_things();
std::span<const Entry> french_of_trade();
std::span<const Entry> french_of_woods();

std::span<const std::span<const Entry>> french_tables();

} // namespace roundlay
