// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/sheets_command.hpp"

#include "blockwright/ledger/target.hpp"
#include "cli/gym_results.hpp"
#include "cli/interrupt.hpp"
#include "cli/json_text.hpp"
#include "cli/terminal.hpp"
#include "sheets/pdf.hpp"
#include "sheets/sheet_layout.hpp"
#include "sheets/sheet_names.hpp"

#include <CLI/CLI.hpp>
#include <QDate>
#include <QGuiApplication>

#include <filesystem>

namespace bw::cli {

namespace {
constexpr SheetKind kSheets[] = {SheetKind::Wall, SheetKind::Cards, SheetKind::Notes,
                                 SheetKind::Kit, SheetKind::Talk};

std::vector<std::string> allNames() {
    std::vector<std::string> names;
    for (const SheetKind kind : kSheets) names.emplace_back(sheetWord(kind));
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

Date today() {
    const QDate day = QDate::currentDate();
    return Date::of(day.year(), day.month(), day.day()).value();
}

void makeFolder(const std::string& folder) {
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    if (error) throw Ending(Exit::BadFile, folder + " can't be made: " + error.message() + ".");
}

std::string writeSheet(const std::string& folder, SheetKind kind, const SheetMatter& matter,
                       const SheetOptions& options) {
    const auto path =
        (std::filesystem::path(folder) / sheetFileName(kind, matter.block).toStdString()).string();
    Progress progress("Writing " + path);
    const auto step = [&](int done, int total) {
        Interrupt::check();
        progress.at(std::to_string(done) + " of " + std::to_string(total));
        return true;
    };
    const auto written =
        writePdf(QString::fromStdString(path), layoutSheet(kind, matter, options, step));
    if (!written) throw Ending(Exit::BadFile, written.why().english());
    return path;
}

// What members did up to the day of the newest result, as far as the month asks for it.
Ledger ledgerFor(const GymResults& results, const Block& block) {
    Ledger ledger(results.gym(), results.day({}));
    results.each({{}, MonthTargets(results.gym(), block).exercises(), ledger.earliest()},
                 [&](const LiftResult& r) { ledger.add(r); });
    return ledger;
}

template <class E> E wordIn(const std::string& word, E otherwise) {
    return fromWord<E>(word).value_or(otherwise);
}

template <class E> CLI::IsMember wordsOf() {
    return CLI::IsMember(
        std::vector<std::string>(Spelling<E>::words.begin(), Spelling<E>::words.end()));
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
    part->add_option("--paper", paper_, "Standard: the gym's")->check(wordsOf<Paper>());
    part->add_option("--unit", unit_, "Of loads (standard: the gym's)")->check(wordsOf<MassUnit>());
    part->add_option("--per-page", perPage_, "Member cards to a page (standard: 2)")
        ->check(CLI::IsMember({2, 4}));
    auto* wide = part->add_flag("--landscape", landscape_,
                                "The paper on its side (standard: for cards only)");
    part->add_flag("--portrait", portrait_, "The paper upright")->excludes(wide);
    part->add_flag("--black-and-white", blackAndWhite_, "One ink, no tints");
    part->add_flag("--large-print", largePrint_, "Nothing below 12 points");
    part->add_flag("--json", json_, "One JSON object: the files written");
    return *part;
}

SheetOptions SheetsCommand::options(SheetKind kind, const GymSettings& gym) const {
    SheetOptions options = usualOptions(gym, kind);
    options.paper = wordIn(paper_, options.paper);
    options.massUnit = wordIn(unit_, options.massUnit);
    options.cardsPerPage = perPage_;
    if (landscape_) options.orientation = Orientation::Landscape;
    if (portrait_) options.orientation = Orientation::Portrait;
    options.blackAndWhite = blackAndWhite_;
    options.largePrint = largePrint_;
    options.printedOn = today();
    return options;
}

Exit SheetsCommand::run() {
    const GymResults results(source_);
    const Gym& gym = results.gym();
    const auto block = source_.block(gym);
    makeFolder(out_);
    startFonts();
    const Ledger ledger = ledgerFor(results, *block);
    const CheckResult verdict = check(gym, *block);
    Json files = Json::array();
    for (const SheetKind kind : kSheets) {
        Interrupt::check();
        const bool wanted =
            only_.empty() || std::find(only_.begin(), only_.end(), sheetWord(kind)) != only_.end();
        if (wanted)
            files.push_back(writeSheet(out_, kind, {gym, *block, &ledger, &verdict},
                                       options(kind, gym.settings)));
    }
    if (json_)
        sayJson({{"files", files}});
    else
        for (const auto& file : files) say(file.get<std::string>() + "\n");
    return Exit::Done;
}

} // namespace bw::cli
