// Weather tags for every log, and the list by which they are loaded.
#pragma once

#include "exporters/sheets/set/subject.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay::sheets {

/// Eight to a sheet of A4 or Letter, to be cut apart, or on the labels of SheetOptions: the tag in large
/// type, wall and round in words, length, raise and weight, where it is stapled and how it lies there, and a
/// QR code of what `tag_code` says.
std::vector<Sheet> tag_sheets(const Draft &draft, const OnlyPieces &only = {});

/// Why tags cannot be printed on the labels that are stated, in one sentence; nothing where they can, or
/// where none are stated.
std::optional<Said> tag_fault(const Draft &draft, const OnlyPieces &only = {});

/// "A-05-1 r.B 3f9a01c2": tag, revision where there is one, short hash of the piece.
std::string tag_code(const Piece &piece, const std::string &revision);

/// Eight hexadecimal digits from the piece's blank and cuts, to a hundredth of a millimetre (FNV-1a): pieces
/// that are cut alike have the same, and a change of any number changes it.
std::string piece_hash(const Piece &piece);

/// Logs in the reverse order of the raise, so that what is needed first lies on top, with their sizes and
/// weights and the sums.
Subject packing_subject();

} // namespace roundlay::sheets
