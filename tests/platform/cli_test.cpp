// The conventions that every command keeps, and the commands that read the demo shop.
#include "tests/platform/tool.h"

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

using namespace undercowl::tests;
using Catch::Contains;

namespace {

// Made once: the tests below only read it.
const std::string& shop() {
    static const Scratch scratch;
    static const std::string folder = [] {
        REQUIRE(ctl("demo --only-shop --store '" + (scratch / "shop") + "'").exit == 0);
        return scratch / "shop";
    }();
    return folder;
}

std::string inShop() {
    return " --store '" + shop() + "' ";
}

} // namespace

TEST_CASE("wrong use is answered with exit 2 and words on standard error") {
    for (const char* arguments : {"", "polish", "job", "job show", "job list --colour", "find",
                                  "handover 2026-031", "demo --along-before 1,2,3"}) {
        INFO(arguments);
        const Ran ran = ctl(arguments);
        CHECK(ran.exit == 2);
        CHECK(ran.out.empty());
        CHECK_FALSE(ran.err.empty());
    }
}

TEST_CASE("every command explains itself with an example and speaks JSON") {
    for (const char* command :
         {"archive",     "archive export", "archive import", "archive verify", "backup",
          "backup list", "backup now",     "backup write",   "backup verify",  "backup restore",
          "store mend",  "store salvage",  "demo",           "find",           "handover",
          "job",         "job list",       "job show",       "job next",       "labels",
          "job rounds",  "job proofs",     "job cost",       "store",          "store check",
          "job round",   "job check",      "job prove",      "job terms",      "job charge",
          "job approve", "store rebuild"}) {
        INFO(command);
        const Ran ran = ctl(std::string{command} + " --help");
        CHECK(ran.exit == 0);
        CHECK_THAT(ran.out, Contains("Example:\n  undercowlctl "));
        CHECK_THAT(ran.out, Contains("--json"));
    }
}

TEST_CASE("the man page names every command, and bash completes them") {
    const std::string package = UNDERCOWL_TESTS "/../platform/linux/package/";
    const std::string page = contentOf(package + "undercowlctl.1");
    const std::string help = ctl("--help").out;
    std::istringstream lines(help.substr(help.find("Subcommands:")));
    int commands = 0;
    for (std::string line; std::getline(lines, line);) {
        if (line.starts_with("  ") && line.size() > 2 && line[2] != ' ') {
            const std::string name = line.substr(2, line.find(' ', 2) - 2);
            INFO(name);
            CHECK_THAT(page, Contains("\n.B " + name));
            ++commands;
        }
    }
    CHECK(commands > 8);

    const std::string completing =
        "-c 'PATH=\"$(dirname \"" UNDERCOWLCTL "\"):$PATH\"; . \"" + package +
        "undercowlctl.bash\"; COMP_WORDS=(undercowlctl backup re); COMP_CWORD=2; "
        "_undercowlctl; echo \"${COMPREPLY[@]}\"; COMP_WORDS=(undercowlctl store check --js); "
        "COMP_CWORD=3; _undercowlctl; echo \"${COMPREPLY[@]}\"; COMP_WORDS=(undercowlctl job pro); "
        "COMP_CWORD=2; _undercowlctl; echo \"${COMPREPLY[@]}\"; COMP_WORDS=(undercowlctl job prove 2026-031 "
        "3 "
        "--se); COMP_CWORD=5; _undercowlctl; echo \"${COMPREPLY[@]}\"'";
    CHECK(run("bash", completing).out == "restore\n--json\nproofs prove\n--seen-by\n");
}

TEST_CASE("a store that is not there is not made by looking at it") {
    const Scratch scratch;
    for (const char* command :
         {"job list", "job show 2026-031", "job next 1", "find lamp", "handover 1 --pdf x.pdf"}) {
        INFO(command);
        const Ran ran = ctl(std::string{command} + " --store '" + (scratch / "typo") + "'");
        CHECK(ran.exit == 3);
        CHECK(ran.out.empty());
        CHECK_THAT(ran.err, Contains("there is no store in") && Contains("--store DIR"));
        CHECK_FALSE(std::filesystem::exists(scratch / "typo"));
    }
}

TEST_CASE("a damaged store is told as such") {
    const Scratch scratch;
    std::filesystem::create_directories(scratch / "shop");
    write(scratch / "shop/shop.db", "this is no database, whatever its name says; " + std::string(4096, 'x'));
    const Ran ran = ctl("job list --store '" + (scratch / "shop") + "'");
    CHECK(ran.exit == 3);
    CHECK_FALSE(ran.err.empty());
}

TEST_CASE("job list tells where each job stopped and what is next") {
    const Ran text = ctl("job list" + inShop());
    CHECK(text.exit == 0);
    CHECK_THAT(text.out,
               Contains("2026-031") && Contains("Marrowin Tern 125, 1987") && Contains("Ilse Quandt"));
    const auto jobs = ctl("--json" + inShop() + "job list").json().at("jobs");
    CHECK(jobs.size() >= 4);
    for (const auto& job : jobs)
        for (const char* field :
             {"id", "number", "machine", "owner", "moment", "stopped", "next", "waits_for", "why"}) {
            INFO(field);
            CHECK_FALSE(job.at(field).get<std::string>().empty());
        }
}

TEST_CASE("job show tells the same in words and in JSON") {
    const Ran text = ctl("job show 2026-031" + inShop());
    CHECK(text.exit == 0);
    const auto job = ctl("job show 2026-031 --json" + inShop()).json();
    CHECK(job.at("machine").at("frame_number") == "MT125-004417");
    CHECK(job.at("odometer") == nlohmann::json{{"value", "18423"}, {"unit", "km"}});
    CHECK(job.at("steps").size() == 10);
    for (const auto& step : job.at("steps"))
        CHECK_THAT(text.out, Contains(step.at("title").get<std::string>()));
    for (const auto& finding : job.at("findings"))
        CHECK_THAT(text.out, Contains(finding.at("text").get<std::string>()));
    CHECK_FALSE(job.at("wiring").at(0).at("title").get<std::string>().empty());
    // Told in the past: this job was taken in before the one that is listed as the newest.
    const auto newest = ctl("job show 2026-032 --json" + inShop()).json();
    CHECK(job.at("opened_at").get<std::string>() < newest.at("opened_at").get<std::string>());
    CHECK(job.at("opened_at").get<std::string>().substr(0, 10) !=
          newest.at("opened_at").get<std::string>().substr(0, 10));
    // By its id the same job is found.
    CHECK(ctl("job show " + job.at("id").get<std::string>() + inShop()).out == text.out);
}

TEST_CASE("job next says what is to be done, and answers no when nothing is") {
    const Ran open = ctl("job next 2026-031" + inShop());
    CHECK(open.exit == 0);
    CHECK_THAT(open.out, Contains("unplug the switch connector"));
    const auto json = ctl("job next 2026-031 --json" + inShop()).json();
    CHECK(json.at("moment") == "refit");
    CHECK(json.at("step").at("title") == "unplug the switch connector");
    CHECK(ctl("job next 2026-024" + inShop()).exit == 1);
    const Ran unknown = ctl("job next 1999-001" + inShop());
    CHECK(unknown.exit == 2);
    CHECK_THAT(unknown.err, Contains("1999-001"));
}

TEST_CASE("knows tells what a model's jobs taught, with what does not agree, and of no owner") {
    const auto known = ctl("knows marrowin 'Tern 125' --json" + inShop()).json();
    CHECK(known.at("years") == nlohmann::json{1987, 1989});
    const std::string all = known.dump();
    CHECK_THAT(all,
               Contains("QX-4412: fits") && Contains("QX-4410: does not fit (pivot hole 1 mm too small)"));
    CHECK_THAT(all, Contains("rear wheel: axle nut M12") && Contains("49 N.m"));
    for (const char* owner : {"Quandt", "Ilse", "Ammer", "Ferry slip", "MT125"})
        CHECK_THAT(all, !Contains(owner));
    const Ran text = ctl("knows Marrowin 'Tern 125'" + inShop());
    CHECK(text.exit == 0);
    CHECK_THAT(text.out, Contains("rear brake linings glazed with grease"));
    CHECK(ctl("knows Nobody 'Nothing 1'" + inShop()).exit == 1);
}

TEST_CASE("The demo's finished jobs were proved, and the one that is not says so") {
    for (const char* number : {"2024-041", "2025-018", "2026-024"})
        CHECK(ctl(std::string("job next ") + number + inShop()).exit == 1); // nothing open
    const Ran open = ctl("job next 2026-030" + inShop());
    CHECK(open.exit == 0);
    CHECK_THAT(open.out, Contains("turn the wheel: it runs free and true"));
    const Ran shown = ctl("job show 2026-030" + inShop());
    CHECK_THAT(shown.out, Contains("stops  do not ride yet: turn the wheel") &&
                              Contains("warns  unsafe, and Mats Oort does not want it put right"));
    const auto against = ctl("job show 2026-030 --json" + inShop()).json().at("against_leaving");
    CHECK(against.at(0).at("stops") == true);
}

TEST_CASE("rounds, proofs and cost answer in words and in JSON, and no where something is open") {
    const Ran proved = ctl("job proofs 2025-018" + inShop());
    CHECK(proved.exit == 0);
    CHECK_THAT(proved.out, Contains("second pair of eyes: Tove"));
    const Ran open = ctl("job proofs 2026-030 --json" + inShop());
    CHECK(open.exit == 1);
    CHECK(open.json().at("open") == 3);
    const auto cost = ctl("job cost 2025-018 --json" + inShop()).json().at("cost");
    CHECK(cost.at("net") == "91.50"); // 70 minutes at 54.00, shoes at 22.50, 6.00
    CHECK(cost.at("gross") == "108.89");
    CHECK_THAT(ctl("job cost 2025-018" + inShop()).out, Contains("91.50"));
    CHECK(ctl("job cost 2026-032" + inShop()).exit == 1);
    CHECK(ctl("job rounds 2025-018" + inShop()).exit == 0);
    const Ran begun = ctl("job rounds 2026-029 --json" + inShop());
    CHECK(begun.exit == 1);
    const auto rounds = begun.json();
    CHECK(rounds.at("open") == 2);
    std::size_t found = 0;
    for (const auto& check : rounds.at("rounds").at(0).at("checks"))
        found += check.at("answer") == "found" ? 1 : 0;
    CHECK(found == 2);
    CHECK_THAT(ctl("job rounds 2026-029" + inShop()).out,
               Contains("not done tail lamp") || Contains("not done lights and signals: tail lamp"));
}

TEST_CASE("find answers with hits, or with no") {
    const Ran hits = ctl("find tail lamp" + inShop());
    CHECK(hits.exit == 0);
    CHECK_FALSE(hits.out.empty());
    const auto json = ctl("find Quandt --json" + inShop()).json();
    REQUIRE_FALSE(json.at("hits").empty());
    for (const char* field : {"kind", "job", "subject", "title", "snippet", "machine"})
        CHECK(json.at("hits").at(0).contains(field));
    const Ran asked = ctl("find 'Where did I see green with a pink tracer on a ring terminal?'" + inShop());
    CHECK(asked.exit == 0);
    CHECK_THAT(asked.out, Contains("regulator") && Contains("job 2024-041"));
    const Ran none = ctl("find zeppelin" + inShop());
    CHECK(none.exit == 1);
    CHECK(none.out.empty());
}

TEST_CASE("handover writes the record as PDF and as a page that stands alone") {
    const Scratch scratch;
    const Ran ran = ctl("handover 2026-024 --json --pdf '" + (scratch / "r.pdf") + "' --html '" +
                        (scratch / "r.html") + "'" + inShop());
    CHECK(ran.exit == 0);
    CHECK(ran.json().at("pdf") == (scratch / "r.pdf"));
    CHECK_THAT(textOfPdf(scratch / "r.pdf"),
               Contains("Kesselby Dart 50, 1994") && Contains("new inlet rubber") && Contains("Noor Bakkum"));
    const std::string page = contentOf(scratch / "r.html");
    CHECK_THAT(page, Contains("Kesselby Dart 50, 1994"));
    CHECK_THAT(page, !Contains("src=\"/") && !Contains("src=\"file") && !Contains("http"));

    const Ran nowhere = ctl("handover 2026-024 --pdf '" + (scratch / "no/such/r.pdf") + "'" + inShop());
    CHECK(nowhere.exit == 2);
    CHECK_THAT(nowhere.err, Contains("no/such/r.pdf"));
}

TEST_CASE("a shop of a newer version, or one that cannot be opened, is read and nothing is written to it") {
    const Scratch scratch;
    const std::string place = scratch / "shop";
    std::filesystem::copy(shop(), place, std::filesystem::copy_options::recursive);
    const std::string database = place + "/shop.db";
    std::string content = contentOf(database);
    const bool newer = GENERATE(true, false);
    if (newer) {
        content[63] =
            99; // user_version is big-endian in bytes 60 to 63 (SQLite, "Database File Format", 1.3)
    } else {
        content.replace(0, 100, 100, '\0');
    }
    std::ofstream(database, std::ios::binary) << content;
    CAPTURE(newer);
    const std::string here = " --store '" + place + "'";
    const std::string why = newer ? "newer version" : "store salvage";

    const Ran list = ctl("job list" + here);
    CHECK(list.exit == (newer ? 0 : 3));
    CHECK_THAT(list.out, Contains("2026-031"));
    CHECK_THAT(list.err, Contains(why));
    const std::string archive = scratch / "031.zip";
    CHECK(ctl("archive export 2026-031 --file '" + archive + "'" + here).exit == (newer ? 0 : 3));
    CHECK(ctl("archive verify '" + archive + "'").exit == 0);
    CHECK(ctl("store check" + here).exit == (newer ? 0 : 3));
    for (const char* writes :
         {"store rebuild", "backup now", "job terms 2026-031 --rate 54 --by Ada", "archive import '"}) {
        INFO(writes);
        const std::string command = std::string(writes).ends_with("'") ? writes + archive + "'" : writes;
        CHECK(ctl(command + here).exit >= 2);
    }
    CHECK(contentOf(database) == content);
}

TEST_CASE("text from outside has its limits") {
    const Scratch scratch;
    const std::string large = scratch / "large.csv";
    std::ofstream(large).close();
    std::filesystem::resize_file(large, (std::uintmax_t{16} << 20U) + 1);
    for (const std::string command : {"sheet check", "learn", "rounds keep"}) {
        INFO(command);
        const Ran ran = ctl(command + " '" + large + "'" + inShop());
        CHECK(ran.exit == 2);
        CHECK_THAT(ran.err, Contains("16 MiB"));
        CHECK(ctl(command + " /dev/zero" + inShop()).exit == 2);
    }
}
