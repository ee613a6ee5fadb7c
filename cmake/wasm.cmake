# Toolchain file: the engine as WebAssembly, with Debian's clang-14, lld-14 and wasi-libc.
# SPDX-License-Identifier: MIT
set(CMAKE_SYSTEM_NAME Generic)
set(CMAKE_SYSTEM_PROCESSOR wasm32)
set(CMAKE_C_COMPILER clang-14)
set(CMAKE_C_COMPILER_TARGET wasm32-wasi)
set(CMAKE_C_FLAGS_INIT "-msimd128 -mnontrapping-fptoint")
set(CMAKE_TRY_COMPILE_TARGET_TYPE STATIC_LIBRARY)
# -O0 is for the linking alone: with more, clang runs whatever wasm-opt it finds. Balances take more
# than the usual 64 KB of stack; at the bottom, running over it is a fault.
set(CMAKE_EXE_LINKER_FLAGS_INIT "-O0 -Wl,-z,stack-size=1048576 -Wl,--stack-first")
