// A disk that fills up while outputs are written. A small memory disk is mounted where the machine lets
// us; a limit on the size of files stands in for it everywhere.
#include "exporters/files/output_folder.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <sys/mount.h>
#include <sys/resource.h>

#include <csignal>

using namespace roundlay;
using namespace roundlay::test;

namespace {

constexpr std::size_t disk_bytes = 256 * 1024;

class SmallDisk {
  public:
    explicit SmallDisk(const std::filesystem::path &at)
        : at_(at), mounted_(::mount("tmpfs", at.c_str(), "tmpfs", 0, "size=256k") == 0) {}
    ~SmallDisk() {
        if (mounted_) ::umount2(at_.c_str(), MNT_DETACH);
    }
    bool mounted() const { return mounted_; }

  private:
    std::filesystem::path at_;
    bool mounted_;
};

class SmallFiles {
  public:
    explicit SmallFiles(rlim_t bytes) {
        ::getrlimit(RLIMIT_FSIZE, &before_);
        handler_ = std::signal(SIGXFSZ, SIG_IGN);
        const rlimit limit = {bytes, before_.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &limit);
    }
    ~SmallFiles() {
        ::setrlimit(RLIMIT_FSIZE, &before_);
        std::signal(SIGXFSZ, handler_);
    }

  private:
    rlimit before_ = {};
    void (*handler_)(int) = SIG_DFL;
};

} // namespace

TEST_CASE("a disk that fills up is one sentence and leaves the old outputs") {
    const TemporaryFolder home;
    const SmallDisk disk(home.path());
    if (!disk.mounted()) {
        WARN("no right to mount a small disk here: only the limit on file sizes is tried");
        return;
    }
    put(home / "shell.step", "old");
    {
        auto folder = std::get<OutputFolder>(OutputFolder::open(home.path()));
        REQUIRE_FALSE(folder.add("cut-list.csv", std::string(disk_bytes / 2, 'x'), "x"));
        const auto error = folder.add("shell.step", std::string(disk_bytes, 'x'), "x");
        REQUIRE(error);
        CHECK_THAT(error->message,
                   ContainsSubstring("no space is left on the disk") && ContainsSubstring("shell.step"));
    }
    CHECK(text_of(home / "shell.step") == "old");
    CHECK(count_entries(home.path()) == 1);
}

TEST_CASE("a file that grows past what is allowed is one sentence and leaves the old outputs") {
    const TemporaryFolder home;
    put(home / "shell.step", "old");
    {
        const SmallFiles limit(disk_bytes);
        auto folder = std::get<OutputFolder>(OutputFolder::open(home.path()));
        const auto error = folder.add("shell.step", std::string(2 * disk_bytes, 'x'), "x");
        REQUIRE(error);
        CHECK_THAT(error->message,
                   ContainsSubstring("larger than is allowed") && ContainsSubstring("shell.step"));
    }
    CHECK(text_of(home / "shell.step") == "old");
    CHECK(count_entries(home.path()) == 1);
}
