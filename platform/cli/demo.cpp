#include "platform/cli/demo.h"

#include "core/job/standing.h"
#include "core/store/archive.h"
#include "core/wiring/readback.h"
#include "core/wiring/twins.h"
#include "platform/cli/record.h"
#include "platform/cli/wires_json.h"
#include "platform/demo/shop.h"

#include <fmt/format.h>

#include <charconv>
#include <cstdlib>
#include <iostream>
#include <memory>
#include <optional>

namespace undercowl::platform {
namespace {

// A stroke as typed: "X,Y" for each of its points.
using Points = std::vector<std::string>;

struct Wanted {
    std::filesystem::path assets{demo::builtInAssets()};
    std::filesystem::path out;
    std::filesystem::path before;
    std::filesystem::path after;
    Points alongBefore;
    Points alongAfter;
    bool onlyShop{};
};

std::optional<sight::Point> pointOf(const std::string& typed) {
    sight::Point point;
    const char* const end = typed.data() + typed.size();
    const auto x = std::from_chars(typed.data(), end, point.x);
    if (x.ec != std::errc{} || x.ptr == end || *x.ptr != ',')
        return {};
    const auto y = std::from_chars(x.ptr + 1, end, point.y);
    return y.ec == std::errc{} && y.ptr == end ? std::optional{point} : std::nullopt;
}

// Refuses what is no point while the command line is read.
const CLI::Validator pointWanted{
    [](const std::string& typed) {
        return pointOf(typed) ? std::string{} : typed + " is no place: write X,Y in pixels, such as 100,400";
    },
    ""};

// Precondition: the points have passed pointWanted.
void replace(demo::Stroke& stroke, const std::filesystem::path& photo, const Points& along) {
    if (!photo.empty()) {
        stroke.photo = photo;
        stroke.card.reset(); // it lies in the photo that came with the demo
    }
    if (along.empty())
        return;
    stroke.along.clear();
    for (const std::string& typed : along)
        stroke.along.push_back(pointOf(typed).value_or(sight::Point{}));
}

// A folder of its own for a demo that was given none, so that it never mixes with the shop's own work.
store::Result<std::filesystem::path> freshFolder() {
    std::string name = (std::filesystem::temp_directory_path() / "undercowl-demo-XXXXXX").string();
    if (mkdtemp(name.data()) == nullptr)
        return tl::unexpected(store::Problem{
            store::Fault::CannotOpen, "no folder for the demo can be made: name one with --store DIR"});
    return std::filesystem::path{name};
}

// What the demo says: lines as they come, or one JSON value at the end.
class Speaker {
public:
    explicit Speaker(bool json) : json_(json) {}

    void title(const std::string& text) const {
        if (!json_)
            std::cout << '\n' << text << '\n';
    }
    void line(const std::string& text) const {
        if (!json_)
            std::cout << "  " << text << '\n';
    }
    void finish() const {
        if (json_)
            printJson(said);
    }

    nlohmann::ordered_json said;

private:
    bool json_;
};

void sayMap(Speaker& speaker, const demo::WiringPlan& plan, const demo::Sighted& before) {
    speaker.title(fmt::format("Wiring map of the {}, read from {}:", plan.title, plan.before.photo.string()));
    auto wires = nlohmann::ordered_json::array();
    int place = 0;
    for (const sight::WireReading& reading : before.wires) {
        const double probability = reading.found() ? reading.candidates.front().probability : 0;
        speaker.line(fmt::format("place {}: {}{}", ++place, toText(reading),
                                 reading.sure ? fmt::format("  (probability {:.3f})", probability) : ""));
        nlohmann::ordered_json wire = crossingToJson(reading);
        wire["place"] = place;
        wires.push_back(std::move(wire));
    }
    speaker.said["photo"] = plan.before.photo.string();
    speaker.said["wires"] = std::move(wires);
}

void sayReadBack(Speaker& speaker, const wiring::Gathering& gathering) {
    const auto twins = wiring::twins(gathering, wiring::Half::Loom);
    auto advice = nlohmann::ordered_json::array();
    if (!twins.empty())
        speaker.title("Twins, to be told apart before the disconnect:");
    for (const wiring::TwinGroup& group : twins) {
        speaker.line(wiring::englishAdvice(group));
        advice.push_back(wiring::englishAdvice(group));
    }
    speaker.said["twins"] = std::move(advice);

    speaker.title("Read-back for the refit, as found:");
    auto sentences = nlohmann::ordered_json::array();
    int next = 1;
    const auto unread = [&](int upTo) {
        for (; next < upTo; ++next) {
            const std::string sentence = fmt::format("place {}: not sure, look at the wire itself", next);
            speaker.line(sentence);
            sentences.push_back(sentence);
        }
    };
    for (const wiring::ReadBackItem& item :
         wiring::readBack(gathering, wiring::Half::Loom, wiring::Answer::AsFound)) {
        unread(item.key.number);
        speaker.line(wiring::englishSentence(item));
        sentences.push_back(wiring::englishSentence(item));
        next = item.key.number + 1;
    }
    unread(gathering.places + 1);
    speaker.said["read_back"] = std::move(sentences);
}

std::string wireAt(const std::vector<sight::WireReading>& row, int place) {
    const auto index = static_cast<std::size_t>(place - 1);
    return index < row.size() ? toText(row.at(index)) : std::string{"nothing"};
}

void sayComparison(Speaker& speaker, const demo::WiringPlan& plan, const sight::Comparison& comparison) {
    speaker.title(fmt::format("Compared with {}:", plan.after.photo.string()));
    speaker.said["comparison"] = toJson(comparison);
    if (comparison.verdict == sight::CompareVerdict::CannotTell)
        speaker.line("cannot tell: too few wires are sure in both photos. Check wire by wire.");
    if (comparison.verdict == sight::CompareVerdict::Same)
        speaker.line("same: no wire has changed its place");
    for (const sight::Change& change : comparison.changes) {
        speaker.line(fmt::format("{}: place{} {}", sight::code(change.kind),
                                 change.places.size() > 1 ? "s" : "", fmt::join(change.places, " and ")));
        for (const int place : change.places) {
            if (change.kind != sight::ChangeKind::Extra)
                speaker.line(
                    fmt::format("    before, place {}: {}", place, wireAt(comparison.before, place)));
            if (change.kind != sight::ChangeKind::Missing)
                speaker.line(fmt::format("    after, place {}: {}", place, wireAt(comparison.after, place)));
        }
    }
}

// The record as PDF and page, and the archive with the PDF in it.
tl::expected<void, Exit> writePapers(Speaker& speaker, const store::Store& store, const demo::Shop& shop,
                                     const std::filesystem::path& out) {
    const auto files = recordOf(store, shop.job);
    if (!files)
        return tl::unexpected(files.error());
    std::error_code failed;
    std::filesystem::create_directories(out, failed); // a failure shows when the first file is written
    const auto pdf = out / (shop.number + "-record.pdf");
    const auto page = out / (shop.number + "-record.html");
    const auto archive = out / (shop.number + "-archive.zip");
    if (auto done = writeFile(pdf, files->pdf); !done)
        return done;
    if (auto done = writeFile(page, std::as_bytes(std::span{files->html})); !done)
        return done;
    if (const auto done = store::exportJob(store, shop.job, archive, files->pdf); !done)
        return tl::unexpected(complain(done.error()));
    speaker.title("Written:");
    speaker.line("record   " + pdf.string());
    speaker.line("page     " + page.string());
    speaker.line("archive  " + archive.string());
    speaker.said["record"] = pdf.string();
    speaker.said["page"] = page.string();
    speaker.said["archive"] = archive.string();
    return {};
}

void sayShop(Speaker& speaker, const std::filesystem::path& folder, const std::vector<store::JobLine>& jobs,
             const demo::Shop& shop) {
    speaker.title(fmt::format("Demo shop in {}{}:", folder.string(), shop.made ? "" : ", made before"));
    speaker.said["store"] = folder.string();
    speaker.said["job"] = {{"id", shop.job}, {"number", shop.number}};
    for (const store::JobLine& line : jobs)
        speaker.line(fmt::format("{}  {} ({}): {}; {}", line.number, line.machine, line.owner,
                                 job::english(line.stopped), job::english(line.next)));
}

Exit run(const Context& context, const Wanted& wanted) {
    auto plan = demo::wiringOf(wanted.assets);
    if (!plan)
        return complain(plan.error());
    replace(plan->before, wanted.before, wanted.alongBefore);
    replace(plan->after, wanted.after, wanted.alongAfter);
    std::filesystem::path folder = context.store;
    if (!context.storeGiven) {
        auto fresh = freshFolder();
        if (!fresh)
            return complain(fresh.error());
        folder = *fresh / "shop";
    }

    Speaker speaker{context.json};
    const auto shop = demo::makeShop(folder, wanted.assets, *plan);
    if (!shop)
        return complain(shop.error());
    auto store = store::Store::open(folder);
    if (!store)
        return complain(store.error());
    const auto jobs = store->jobs();
    if (!jobs)
        return complain(jobs.error());
    sayShop(speaker, folder, *jobs, *shop);
    if (wanted.onlyShop) {
        speaker.finish();
        return Exit::Done;
    }

    const auto before = demo::sighted(plan->before);
    if (!before)
        return complain(before.error());
    sayMap(speaker, *plan, *before);
    if (auto kept = demo::keepMap(*store, *shop, *plan, *before); !kept)
        return complain(kept.error());
    const auto job = store->job(shop->job);
    if (!job)
        return complain(job.error());
    if (const auto* gathering = job::findGathering(*job, shop->gathering))
        sayReadBack(speaker, *gathering);

    const auto after = demo::sighted(plan->after);
    if (!after)
        return complain(after.error());
    const sight::Comparison comparison = sight::compare(before->wires, after->wires);
    sayComparison(speaker, *plan, comparison);
    if (auto kept = demo::keepChecks(*store, *shop, *plan, *after, comparison); !kept)
        return complain(kept.error());
    if (auto written =
            writePapers(speaker, *store, *shop,
                        wanted.out.empty() ? std::filesystem::absolute(folder).parent_path() : wanted.out);
        !written)
        return written.error();
    speaker.finish();
    return Exit::Done;
}

} // namespace

void addDemoCommand(CLI::App& root, Context& context) {
    CLI::App* command = addCommand(
        root, "demo",
        "Make a demo shop and do the main job on it: read the wiring from a photo, read it back, find what "
        "changed in a "
        "second photo, write the owner's record and the archive. Without --store in a fresh folder.",
        "undercowlctl demo --store /tmp/shop --out /tmp\n"
        "  undercowlctl demo --before my.jpg --along-before 100,400 700,380 --after my2.jpg --along-after "
        "90,410 690,395");
    const auto wanted = std::make_shared<Wanted>();
    command
        ->add_option("--out", wanted->out, "Folder for record and archive (that in which the store's lies)")
        ->type_name("DIR");
    command->add_option("--before", wanted->before, "Another photo before the disconnect")
        ->type_name("PHOTO");
    command->add_option("--along-before", wanted->alongBefore, "Stroke across its wires, from place 1")
        ->check(pointWanted)
        ->type_name("X,Y");
    command->add_option("--after", wanted->after, "Another photo after the refit")->type_name("PHOTO");
    command->add_option("--along-after", wanted->alongAfter, "Stroke across its wires, from place 1")
        ->check(pointWanted)
        ->type_name("X,Y");
    command->add_option("--assets", wanted->assets, "Folder of the demo's data")->type_name("DIR");
    command->add_flag("--only-shop", wanted->onlyShop, "Make the shop and do no more");
    command->callback(
        [&context, wanted] { context.action = [&context, wanted] { return run(context, *wanted); }; });
}

} // namespace undercowl::platform
