@echo off
rem Starts Benchtrue on Java 17 or newer: JAVA_HOME's, else the one on the PATH.
rem   BENCHTRUE_OPTS   options for Java, such as -Xmx6g
setlocal
set "HOME_OF_PROGRAM=%~dp0.."
set "JAVA="
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
if not defined JAVA for %%J in (java.exe) do set "JAVA=%%~$PATH:J"
if not defined JAVA (
    >&2 echo benchtrue: error 69: Found no Java. Install Java 17 or newer, or set JAVA_HOME to its folder.
    exit /b 69
)
"%JAVA%" --version >nul 2>&1
if errorlevel 1 goto old
for /f "tokens=2 delims=. " %%V in ('^""%JAVA%" --version^"') do (
    if %%V LSS 17 goto old
    goto start
)
:old
>&2 echo benchtrue: error 69: %JAVA% is older than Java 17. Install Java 17 or newer, or set JAVA_HOME to its folder.
exit /b 69
:start
"%JAVA%" -Xshare:auto -XX:+UseSerialGC %BENCHTRUE_OPTS% -cp "%HOME_OF_PROGRAM%\benchtrue.jar" benchtrue.command.Main %*
exit /b %ERRORLEVEL%
