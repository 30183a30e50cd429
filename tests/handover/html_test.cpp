#include "tests/handover/sample.h"

#include <catch2/catch.hpp>

using namespace undercowl;
using namespace undercowl::handover;
using Catch::Contains;

namespace {

std::string page(const job::Job& job, const job::Machine& machine = sample::machine()) {
    return html(ownersRecord(job, machine, sample::owner(), sample::mechanics()), englishWords(),
                [](const std::string& media) { return "media/" + media; });
}

std::size_t count(const std::string& text, const std::string& part) {
    std::size_t found = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + part.size()))
        ++found;
    return found;
}

} // namespace

TEST_CASE("the page holds the record's words") {
    const std::string text = page(sample::job());
    CHECK_THAT(text, Contains("<h1>Record of work 2025-014</h1>"));
    CHECK_THAT(text, Contains("<td>green with white tracer</td>"));
    CHECK_THAT(text, Contains("<p class=\"caution\">Unsafe and not yet put right: perished brake hose."));
    CHECK_THAT(text, Contains("<th scope=\"row\">Machine</th>"));
}

TEST_CASE("typed text never becomes markup") {
    const std::string hostile = "<script>alert('x')</script>\" onload=\"y & <!-- \n\x01]]>";
    job::Job job = sample::job();
    const std::size_t tags = count(page(job), "<");
    job.number = hostile;
    job.reason = hostile;
    job.findings.at(0).text = hostile;
    job.findings.at(1).toDo = hostile;
    job.tasks.at(0).title = hostile;
    job.steps.at(0).title = hostile;
    job.gatherings.at(0).title = hostile;
    job.gatherings.at(0).at({wiring::Half::Loom, 3, 1}).answer(wiring::Answer::AsFound)->wire.function =
        hostile;
    job.readings.at(0).instrument = hostile;
    job.parts.at(0).number = hostile;
    job::Photo photo;
    photo.media = "a\" onerror=\"b.jpg";
    photo.note = hostile;
    job.photos = {photo};
    job::Machine machine = sample::machine();
    machine.frameNumber = hostile;
    const std::string text = page(job, machine);
    CHECK(count(text, "<script") == 0);
    CHECK(count(text, "<!--") == 0);
    CHECK(count(text, "\x01") == 0);
    CHECK(count(text, "\" onload=\"") == 0);
    CHECK(count(text, "\" onerror=\"") == 0);
    CHECK_THAT(
        text,
        Contains("&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt;&quot; onload=&quot;y &amp; &lt;!-- "));
    // The only tags more are those of the photos' section and the breaks of the hostile text's line ends.
    constexpr std::size_t photoTags = 11;
    CHECK(count(text, "<") == tags + photoTags + count(text, "<br>"));
}

TEST_CASE("a picture without a source is left out") {
    job::Job job = sample::job();
    job::Photo photo;
    photo.media = "lost.jpg";
    job.photos = {photo};
    const std::string text = html(ownersRecord(job, sample::machine(), sample::owner(), sample::mechanics()),
                                  englishWords(), [](const std::string&) { return std::string{}; });
    CHECK(count(text, "<img") == 0);
}

TEST_CASE("the page names the language that its words speak") {
    const Words shouting = [](const Text& text) {
        return std::holds_alternative<Message>(text) ? std::string{"WORT"} : std::get<std::string>(text);
    };
    const std::string text = html(
        ownersRecord(sample::job(), sample::machine(), sample::owner(), sample::mechanics()), shouting,
        [](const std::string& media) { return media; }, "de");
    CHECK_THAT(text, Contains("<html lang=\"de\">"));
    CHECK_THAT(text, Contains("<h1>WORT</h1>"));
}
