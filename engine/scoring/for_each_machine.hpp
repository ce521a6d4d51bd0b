// Loops over columns, made ready for more than one kind of machine.
#pragma once

/// Before a function: the program holds it twice where that can be, once for all machines and once
/// for those with vectors of four numbers. Both do the same operations in the same order, without
/// fused ones.
#if defined(__x86_64__) && defined(__GLIBC__)
#define HEELRULE_FOR_EACH_MACHINE [[gnu::target_clones("default", "avx2"), gnu::flatten]]
#else
#define HEELRULE_FOR_EACH_MACHINE
#endif
