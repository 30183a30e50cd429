// Runs a program, and all that it starts, without a network: whoever asks for a socket that could reach
// another machine is ended by the kernel (SIGSYS). usage: no_network PROGRAM [ARGUMENT...]
#include <linux/audit.h>
#include <linux/filter.h>
#include <linux/seccomp.h>
#include <sys/prctl.h>
#include <sys/socket.h>
#include <sys/syscall.h>
#include <unistd.h>

#include <array>
#include <cstddef>
#include <cstdio>

namespace {

#if defined(__x86_64__)
constexpr unsigned ownSystem = AUDIT_ARCH_X86_64;
#elif defined(__aarch64__)
constexpr unsigned ownSystem = AUDIT_ARCH_AARCH64;
#else
#error "Name the system's own calls here (linux/audit.h)."
#endif

// Sockets to programs on this machine (displays, sound) and to its kernel (what is plugged in) are allowed.
std::array filter{
    sock_filter{BPF_LD | BPF_W | BPF_ABS, 0, 0, offsetof(seccomp_data, arch)},
    sock_filter{BPF_JMP | BPF_JEQ | BPF_K, 0, 5, ownSystem},
    sock_filter{BPF_LD | BPF_W | BPF_ABS, 0, 0, offsetof(seccomp_data, nr)},
    sock_filter{BPF_JMP | BPF_JEQ | BPF_K, 0, 4, __NR_socket},
    sock_filter{BPF_LD | BPF_W | BPF_ABS, 0, 0,
                offsetof(seccomp_data, args)}, // the low half: little end first
    sock_filter{BPF_JMP | BPF_JEQ | BPF_K, 2, 0, AF_UNIX},
    sock_filter{BPF_JMP | BPF_JEQ | BPF_K, 1, 0, AF_NETLINK},
    sock_filter{BPF_RET | BPF_K, 0, 0, SECCOMP_RET_KILL_PROCESS},
    sock_filter{BPF_RET | BPF_K, 0, 0, SECCOMP_RET_ALLOW},
};

} // namespace

int main(int argc, char** argv) {
    if (argc < 2) {
        std::fprintf(stderr, "usage: no_network PROGRAM [ARGUMENT...]\n");
        return 2;
    }
    const sock_fprog program{static_cast<unsigned short>(filter.size()), filter.data()};
    if (prctl(PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0) != 0 ||
        prctl(PR_SET_SECCOMP, SECCOMP_MODE_FILTER, &program) != 0) {
        std::perror("no_network");
        return 2;
    }
    execvp(argv[1], argv + 1);
    std::perror(argv[1]);
    return 2;
}
