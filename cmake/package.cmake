# What is installed, and the Debian packages of it: the program, its library, and the sweep by MPI.
# SPDX-License-Identifier: MIT
include(GNUInstallDirs)

# --- manual pages and completions, written from the tables
set(made ${PROJECT_BINARY_DIR}/manual)
file(MAKE_DIRECTORY ${made})
file(GLOB manual_sources CONFIGURE_DEPENDS manual/*.c)
add_executable(lullwise_manual ${manual_sources})
target_link_libraries(lullwise_manual PRIVATE lullwise_command)
target_compile_definitions(lullwise_manual PRIVATE LW_VERSION="${PROJECT_VERSION}"
                           LW_DATE="${LW_DATE}")
set(program_pages ${made}/lullwise.1)
set(record_pages ${made}/lullwise-boat.5 ${made}/lullwise-sailor.5 ${made}/lullwise-day.5)
set(completions ${made}/lullwise.bash ${made}/_lullwise ${made}/lullwise.fish)
add_custom_command(OUTPUT ${program_pages} ${record_pages} ${made}/lullwise-sweep.1 ${completions}
                   COMMAND lullwise_manual ${made} DEPENDS lullwise_manual)
add_custom_target(manual ALL DEPENDS ${program_pages} ${completions})

# --- what every Debian package has: copyright and changelog
configure_file(${PROJECT_SOURCE_DIR}/cmake/package/changelog.in ${made}/changelog)
execute_process(COMMAND gzip -9nf ${made}/changelog)
configure_file(${PROJECT_SOURCE_DIR}/cmake/package/copyright.in ${made}/copyright)
function(install_documents package component)
  install(FILES ${made}/copyright ${made}/changelog.gz
          DESTINATION ${CMAKE_INSTALL_DATADIR}/doc/${package} COMPONENT ${component})
endfunction()
function(install_pages section component)  # compressed, as Debian has them
  foreach(page IN LISTS ARGN)
    get_filename_component(name ${page} NAME)
    add_custom_command(OUTPUT ${page}.gz COMMAND gzip -9nkf ${page} DEPENDS ${page})
    add_custom_target(compressed_${name} ALL DEPENDS ${page}.gz)
    install(FILES ${page}.gz DESTINATION ${CMAKE_INSTALL_MANDIR}/man${section}
            COMPONENT ${component})
  endforeach()
endfunction()

# --- the program
install(TARGETS lullwise COMPONENT program)
install_pages(1 program ${program_pages})
install_pages(5 program ${record_pages})
install(FILES ${made}/lullwise.bash RENAME lullwise COMPONENT program
        DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions)
install(FILES ${made}/_lullwise COMPONENT program
        DESTINATION ${CMAKE_INSTALL_DATADIR}/zsh/vendor-completions)
install(FILES ${made}/lullwise.fish COMPONENT program
        DESTINATION ${CMAKE_INSTALL_DATADIR}/fish/vendor_completions.d)
install(DIRECTORY demo/ DESTINATION ${CMAKE_INSTALL_DATADIR}/doc/lullwise/examples
        COMPONENT program)
install_documents(lullwise program)

# --- the library: the engine, for programs of one's own
configure_file(${PROJECT_SOURCE_DIR}/cmake/package/lullwise.pc.in ${made}/lullwise.pc @ONLY)
file(RELATIVE_PATH LW_UP /${CMAKE_INSTALL_LIBDIR}/cmake/lullwise /)
configure_file(${PROJECT_SOURCE_DIR}/cmake/package/lullwise-config.cmake.in
               ${made}/lullwise-config.cmake @ONLY)
include(CMakePackageConfigHelpers)
write_basic_package_version_file(${made}/lullwise-config-version.cmake
                                 COMPATIBILITY SameMinorVersion)
install(DIRECTORY engine/include/lullwise DESTINATION ${CMAKE_INSTALL_INCLUDEDIR} COMPONENT library)
install(FILES $<TARGET_FILE:lullwise_engine> RENAME liblullwise.a
        DESTINATION ${CMAKE_INSTALL_LIBDIR} COMPONENT library)
install(FILES ${made}/lullwise.pc DESTINATION ${CMAKE_INSTALL_LIBDIR}/pkgconfig COMPONENT library)
install(FILES ${made}/lullwise-config.cmake ${made}/lullwise-config-version.cmake
        DESTINATION ${CMAKE_INSTALL_LIBDIR}/cmake/lullwise COMPONENT library)
install(DIRECTORY example/ DESTINATION ${CMAKE_INSTALL_DATADIR}/doc/liblullwise-dev/examples
        COMPONENT library FILES_MATCHING PATTERN "*.c")
install_documents(liblullwise-dev library)

# --- the sweep on many machines
set(CPACK_COMPONENTS_ALL program library)
if(TARGET lullwise-sweep)
  list(APPEND CPACK_COMPONENTS_ALL ranks)
  install(TARGETS lullwise-sweep COMPONENT ranks)
  install_pages(1 ranks ${made}/lullwise-sweep.1)
  install_documents(lullwise-mpi ranks)
endif()

# --- packages
set(CPACK_GENERATOR DEB)
set(CPACK_DEB_COMPONENT_INSTALL ON)
set(CPACK_COMPONENTS_GROUPING IGNORE)
set(CPACK_STRIP_FILES ON)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE
    GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
set(CPACK_PACKAGE_CONTACT "${LW_MAINTAINER}")
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PROGRAM_PACKAGE_NAME lullwise)
set(CPACK_DEBIAN_PROGRAM_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PROGRAM_PACKAGE_RECOMMENDS librsvg2-bin)
set(CPACK_COMPONENT_PROGRAM_DESCRIPTION "which set-up to sail on a foiling dinghy
From a boat measured with a tape, a sailor and the day's lulls and puffs it
works out forces, balance and rides, and ranks the set-ups with a reason for
each place.")
set(CPACK_DEBIAN_LIBRARY_PACKAGE_NAME liblullwise-dev)
set(CPACK_DEBIAN_LIBRARY_PACKAGE_SECTION libdevel)
set(CPACK_DEBIAN_LIBRARY_PACKAGE_SHLIBDEPS OFF)
set(CPACK_COMPONENT_LIBRARY_DESCRIPTION "engine of lullwise, for programs of one's own
Headers and static library: steady flight, rides, ranges and choices of a
foiling dinghy, without files, clock or allocation.")
set(CPACK_DEBIAN_RANKS_PACKAGE_NAME lullwise-mpi)
set(CPACK_DEBIAN_RANKS_PACKAGE_SECTION science)
set(CPACK_DEBIAN_RANKS_PACKAGE_RECOMMENDS mpich)
set(CPACK_COMPONENT_RANKS_DESCRIPTION "sweeps of lullwise on many machines
Tables of answers over any quantities of boat, sailor and day, by MPI: the
same table whatever the number of ranks; one that dies costs only time.")
include(CPack)
