# Cross-compiling for 64-bit ARM against the sysroot that build.sh makes.
#   cmake --preset arm64    with UNDERCOWL_SYSROOT in the environment, or build/arm64-sysroot
set(CMAKE_SYSTEM_NAME Linux)
set(CMAKE_SYSTEM_PROCESSOR aarch64)
if(DEFINED ENV{UNDERCOWL_SYSROOT})
    set(CMAKE_SYSROOT $ENV{UNDERCOWL_SYSROOT})
else()
    get_filename_component(CMAKE_SYSROOT ${CMAKE_CURRENT_LIST_DIR}/../../../build/arm64-sysroot ABSOLUTE)
endif()
set(CMAKE_C_COMPILER aarch64-linux-gnu-gcc)
set(CMAKE_CXX_COMPILER aarch64-linux-gnu-g++)
set(CMAKE_LIBRARY_ARCHITECTURE aarch64-linux-gnu)
set(CMAKE_FIND_ROOT_PATH_MODE_PROGRAM NEVER)
set(CMAKE_FIND_ROOT_PATH_MODE_LIBRARY ONLY)
set(CMAKE_FIND_ROOT_PATH_MODE_INCLUDE ONLY)
set(CMAKE_FIND_ROOT_PATH_MODE_PACKAGE ONLY)
set(ENV{PKG_CONFIG_SYSROOT_DIR} ${CMAKE_SYSROOT})
set(ENV{PKG_CONFIG_LIBDIR} ${CMAKE_SYSROOT}/usr/lib/aarch64-linux-gnu/pkgconfig:${CMAKE_SYSROOT}/usr/share/pkgconfig)
# Qt's own tools run on this machine.
set(QT_HOST_PATH /usr CACHE PATH "")
set(QT_HOST_PATH_CMAKE_DIR /usr/lib/x86_64-linux-gnu/cmake CACHE PATH "")
# Libraries that libraries of the sysroot need are found there.
add_link_options(LINKER:-rpath-link,${CMAKE_SYSROOT}/usr/lib/aarch64-linux-gnu
                 LINKER:-rpath-link,${CMAKE_SYSROOT}/usr/lib/aarch64-linux-gnu/blas
                 LINKER:-rpath-link,${CMAKE_SYSROOT}/usr/lib/aarch64-linux-gnu/lapack)
set(CMAKE_CROSSCOMPILING_EMULATOR qemu-aarch64-static;-L;${CMAKE_SYSROOT})
