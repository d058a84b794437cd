// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/sheets_command.hpp"

#include "cli/interrupt.hpp"
#include "cli/json_text.hpp"
#include "cli/terminal.hpp"
#include "sheets/pdf.hpp"
#include "sheets/sheet_names.hpp"
#include "sheets/wall_sheet.hpp"

#include <CLI/CLI.hpp>
#include <QGuiApplication>

#include <filesystem>

namespace bw::cli {

namespace {
using LayOut = Layout (*)(const Gym&, const Block&, const SheetOptions&);
constexpr std::pair<SheetKind, LayOut> kSheets[] = {{SheetKind::Wall, layoutWall}};

std::vector<std::string> allNames() {
    std::vector<std::string> names;
    for (const auto& sheet : kSheets) names.emplace_back(sheetWord(sheet.first));
    return names;
}

// Fonts need an application, but no screen: the same pages come out with one and without.
void startFonts() {
    static int argc = 1;
    static char name[] = "bwright";
    static char* argv[] = {name, nullptr};
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler([](QtMsgType type, const QMessageLogContext&, const QString& text) {
        if (type == QtCriticalMsg || type == QtFatalMsg) complain(text.toStdString());
    });
    static const QGuiApplication app(argc, argv);
}

void makeFolder(const std::string& folder) {
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    if (error) throw Ending(Exit::BadFile, folder + " can't be made: " + error.message() + ".");
}

std::string writeSheet(const std::string& folder, const Gym& gym, const Block& block,
                       SheetKind kind, LayOut layOut) {
    const auto path =
        (std::filesystem::path(folder) / sheetFileName(kind, block).toStdString()).string();
    const Progress progress("Writing " + path);
    const auto written =
        writePdf(QString::fromStdString(path), layOut(gym, block, usualOptions(gym.settings)));
    if (!written) throw Ending(Exit::BadFile, written.why().english());
    return path;
}
} // namespace

CLI::App& SheetsCommand::declare(CLI::App& program) {
    auto* part = program.add_subcommand("sheets", "The month's sheets as PDF files");
    source_.declare(*part);
    part->add_option("--out", out_, "The folder; made when it does not exist")
        ->type_name("DIR")
        ->required();
    part->add_option("--only", only_, "Some of the sheets, with commas between (standard: all)")
        ->delimiter(',')
        ->check(CLI::IsMember(allNames()));
    part->add_flag("--json", json_, "One JSON object: the files written");
    return *part;
}

Exit SheetsCommand::run() {
    const Gym gym = source_.load().gym;
    const auto block = source_.block(gym);
    makeFolder(out_);
    startFonts();
    Json files = Json::array();
    for (const auto& [kind, layOut] : kSheets) {
        Interrupt::check();
        const bool wanted =
            only_.empty() || std::find(only_.begin(), only_.end(), sheetWord(kind)) != only_.end();
        if (wanted) files.push_back(writeSheet(out_, gym, *block, kind, layOut));
    }
    if (json_)
        sayJson({{"files", files}});
    else
        for (const auto& file : files) say(file.get<std::string>() + "\n");
    return Exit::Done;
}

} // namespace bw::cli
