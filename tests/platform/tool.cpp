#include "tests/platform/tool.h"

#include <catch2/catch.hpp>

#include <sys/wait.h>

#include <cstdlib>
#include <fstream>
#include <iterator>

namespace undercowl::tests {

nlohmann::json Ran::json() const {
    INFO(out);
    INFO(err);
    auto value = nlohmann::json::parse(out, nullptr, false);
    REQUIRE_FALSE(value.is_discarded());
    return value;
}

Ran run(const std::string& program, const std::string& arguments) {
    const Scratch scratch;
    const std::string command = "'" + program + "' " + arguments + " >'" + (scratch / "out") + "' 2>'" +
                                (scratch / "err") + "' </dev/null";
    const int status = std::system(command.c_str());
    REQUIRE(WIFEXITED(status));
    return {WEXITSTATUS(status), contentOf(scratch / "out"), contentOf(scratch / "err")};
}

Ran ctl(const std::string& arguments) {
    return run(UNDERCOWLCTL, arguments);
}

Scratch::Scratch() {
    std::string name = (std::filesystem::temp_directory_path() / "undercowl-test-XXXXXX").string();
    REQUIRE(mkdtemp(name.data()) != nullptr);
    folder_ = name;
}

Scratch::~Scratch() {
    std::error_code ignored;
    std::filesystem::remove_all(folder_, ignored);
}

std::string textOfPdf(const std::string& file) {
    const Ran ran = run("pdftotext", "-layout '" + file + "' -");
    REQUIRE(ran.exit == 0);
    return ran.out;
}

std::string contentOf(const std::string& file) {
    std::ifstream in{file, std::ios::binary};
    return {std::istreambuf_iterator<char>{in}, {}};
}

void write(const std::string& file, const std::string& content) {
    std::ofstream{file, std::ios::binary} << content;
}

} // namespace undercowl::tests
