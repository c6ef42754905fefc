// SPDX-License-Identifier: GPL-3.0-or-later
// Problems of a plan and errors of files, which rigs/ words in English, in the reader's language.
#pragma once

#include <QString>
#include <string_view>

namespace gui {

// The same in the reader's language, numbers with its decimal sign; what somebody wrote, and what
// stands in quotation marks, as it is. A sentence that is not known in all its parts stays English:
// half of one in each language would be read by nobody.
QString toldProblem(std::string_view english);

}  // namespace gui
