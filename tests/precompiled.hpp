// What nearly every test includes, compiled once for all of them.
#pragma once

#include <catch2/catch.hpp>
#include <string>
#include <string_view>
#include <vector>
