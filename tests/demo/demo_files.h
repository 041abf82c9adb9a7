#pragma once

#include <map>
#include <string>

/// The files of demo_sessions by name, made anew: the same bytes every time.
std::map<std::string, std::string> demoFiles();
