#pragma once

#include "domain/mark.h"
