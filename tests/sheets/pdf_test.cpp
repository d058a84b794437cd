// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/low_tide.hpp"
#include "sheets/pdf.hpp"
#include "sheets/sheet_support.hpp"
#include "sheets/wall_sheet.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <QDir>
#include <QRegularExpression>

#include <csignal>
#include <sys/resource.h>

using namespace bw;
using namespace bw::test;

namespace {
constexpr double kPoint = 25.4 / 72;

QString inFolder(const TempFolder& folder, const char* name) {
    return QString::fromStdString((folder / name).string());
}
Layout demo(const SheetOptions& options = {}) {
    return layoutWall(saltmarsh(), lowTide(), options);
}

// No file of this process may grow beyond so many bytes: what a full disk does.
class SmallDisk {
public:
    explicit SmallDisk(rlim_t bytes) {
        before_ = std::signal(SIGXFSZ, SIG_IGN);
        ::getrlimit(RLIMIT_FSIZE, &limit_);
        const rlimit small{bytes, limit_.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &small);
    }
    ~SmallDisk() {
        ::setrlimit(RLIMIT_FSIZE, &limit_);
        std::signal(SIGXFSZ, before_);
    }
    SmallDisk(const SmallDisk&) = delete;
    SmallDisk& operator=(const SmallDisk&) = delete;

private:
    rlimit limit_{};
    void (*before_)(int) = nullptr;
};

// First place of a word in the output of pdftotext -bbox: left, top, right, bottom in millimetres.
QRectF boxOf(const QString& boxes, const QString& word) {
    const QRegularExpression line("xMin=\"([0-9.]+)\" yMin=\"([0-9.]+)\" xMax=\"([0-9.]+)\" "
                                  "yMax=\"([0-9.]+)\">" +
                                  QRegularExpression::escape(word) + "</word>");
    const auto match = line.match(boxes);
    if (!match.hasMatch()) return {};
    const auto mm = [&](int i) { return match.captured(i).toDouble() * kPoint; };
    return {QPointF(mm(1), mm(2)), QPointF(mm(3), mm(4))};
}
} // namespace

TEST_CASE("a PDF has the paper's size, its pages and its title") {
    const TempFolder folder;
    struct Expected {
        Paper paper;
        Orientation turn;
        double width, height; // points
    };
    // ISO 216 and 8.5 by 11 in, at 72 points to the inch
    for (const Expected& e : {Expected{Paper::A4, Orientation::Portrait, 595.28, 841.89},
                              Expected{Paper::A4, Orientation::Landscape, 841.89, 595.28},
                              Expected{Paper::Letter, Orientation::Portrait, 612, 792},
                              Expected{Paper::A3, Orientation::Landscape, 1190.55, 841.89}}) {
        SheetOptions options;
        options.paper = e.paper;
        options.orientation = e.turn;
        const Layout layout = demo(options);
        const QString path = inFolder(folder, "wall.pdf");
        REQUIRE(writePdf(path, layout).ok());
        const QString info = outputOf("pdfinfo", {path});
        if (info.isEmpty()) return;
        CHECK(info.contains("Low tide (wall sheet)"));
        const auto pages = QRegularExpression("Pages:\\s+(\\d+)").match(info).captured(1).toUInt();
        CHECK(pages == layout.pages.size());
        const auto size = QRegularExpression("Page size:\\s+([0-9.]+) x ([0-9.]+)").match(info);
        CHECK(size.captured(1).toDouble() == Approx(e.width).margin(1));
        CHECK(size.captured(2).toDouble() == Approx(e.height).margin(1));
    }
}

TEST_CASE("every font of a PDF is embedded and can be read back") {
    const TempFolder folder;
    const QString path = inFolder(folder, "wall.pdf");
    REQUIRE(writePdf(path, demo()).ok());
    const QStringList lines = outputOf("pdffonts", {path}).split('\n', Qt::SkipEmptyParts);
    if (lines.isEmpty()) return;
    REQUIRE(lines.size() >= 4); // two of heads, then the fonts: book and bold
    for (const QString& line : lines.mid(2)) {
        const QStringList cells = line.simplified().split(' ');
        CHECK(cells[0].contains("DejaVuSans"));
        CHECK(cells[cells.size() - 5] == "yes"); // emb
        CHECK(cells[cells.size() - 3] == "yes"); // uni
    }
}

TEST_CASE("the text of a PDF is found where the layout put it") {
    const TempFolder folder;
    const QString path = inFolder(folder, "wall.pdf");
    const Layout layout = demo();
    REQUIRE(writePdf(path, layout).ok());
    const QString boxes = outputOf("pdftotext", {"-bbox", path, "-"});
    if (boxes.isEmpty()) return;
    int compared = 0;
    for (const TextItem& item : textsOf(layout)) {
        if (item.rank != Rank::Key || item.text.contains(' ')) continue;
        const QRectF place = boxOf(boxes, item.text);
        CAPTURE(item.text.toStdString());
        if (boxes.count(">" + item.text + "<") != 1) continue;
        ++compared;
        CHECK(place.left() == Approx(item.at.x()).margin(0.5));
        CHECK(place.width() == Approx(item.width).margin(0.5));
        CHECK(place.top() < item.box.top());
        CHECK(place.bottom() > item.at.y());
    }
    CHECK(compared > 14); // the labels at the least
}

TEST_CASE("letters that often melt together stay searchable") {
    const TempFolder folder;
    const QString path = inFolder(folder, "wall.pdf");
    Gym gym = saltmarsh();
    Exercise e = exercise("fly", Pattern::HorizontalPush);
    e.name = "Stiff affine fly";
    gym.shelf.put(e);
    const Block draft = block(
        "2026-09",
        {section(SectionKind::Strength, {group(rounds(1, 1), {}, {slot("fly", reps(5, 5))})})});
    REQUIRE(writePdf(path, layoutWall(gym, draft, {})).ok());
    const QString text = outputOf("pdftotext", {path, "-"});
    if (text.isEmpty()) return;
    CHECK(text.simplified().contains("Stiff affine fly"));
}

TEST_CASE("a full disk leaves the sheet that was there before") {
    const TempFolder folder;
    const QString path = inFolder(folder, "wall.pdf");
    const Layout layout = demo();
    writeText(folder / "wall.pdf", "older sheet");
    {
        const SmallDisk full(4096);
        const auto done = writePdf(path, layout);
        REQUIRE_FALSE(done.ok());
        CHECK(done.why().english().find("is kept") != std::string::npos);
    }
    CHECK(readText(folder / "wall.pdf") == "older sheet");
    CHECK(QDir(QString::fromStdString(folder.path().string())).entryList(QDir::Files).size() == 1);
    REQUIRE(writePdf(path, layout).ok());
    CHECK(readText(folder / "wall.pdf").rfind("%PDF-", 0) == 0);
}

TEST_CASE("a full disk leaves no half sheet") {
    const TempFolder folder;
    const Layout layout = demo();
    {
        const SmallDisk full(4096);
        const auto done = writePdf(inFolder(folder, "wall.pdf"), layout);
        REQUIRE_FALSE(done.ok());
        CHECK(done.why().english().find("No file was left") != std::string::npos);
    }
    CHECK(QDir(QString::fromStdString(folder.path().string())).entryList(QDir::Files).isEmpty());
}

TEST_CASE("a folder that is not there is said so") {
    const TempFolder folder;
    const auto done = writePdf(inFolder(folder, "none/wall.pdf"), demo());
    REQUIRE_FALSE(done.ok());
    CHECK(done.why().english().find("none/wall.pdf") != std::string::npos);
}
